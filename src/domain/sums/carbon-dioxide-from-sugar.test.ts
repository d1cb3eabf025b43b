import { expect, test } from 'vitest';
import { carbonDioxideFromSugar } from './carbon-dioxide-from-sugar';

test('two grams of sugar make nearly one of gas', () =>
  expect(carbonDioxideFromSugar(2)).toBeCloseTo(0.977, 3));

test.each([-1, 401])('%d g/L is refused', (sugar) =>
  expect(() => carbonDioxideFromSugar(sugar)).toThrow(RangeError),
);
