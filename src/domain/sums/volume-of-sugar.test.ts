import { expect, test } from 'vitest';
import { volumeOfSugar } from './volume-of-sugar';

test('a kilogram swells the must by 0.618 litres', () => expect(volumeOfSugar(1000)).toBeCloseTo(0.618, 9));

test.each([-1, 30_001])('%d g is refused', (grams) => expect(() => volumeOfSugar(grams)).toThrow(RangeError));
