import { expect, test } from 'vitest';
import { sugarForAlcohol } from './sugar-for-alcohol';

test('a percent in 23 litres takes 391 g', () =>
  expect(sugarForAlcohol({ litres: 23, percent: 1 })).toBeCloseTo(391, 9));

test.each([
  [0, 1],
  [101, 1],
  [23, -1],
  [23, 5.1],
])('%d litres by %d % is refused', (litres, percent) =>
  expect(() => sugarForAlcohol({ litres, percent })).toThrow(RangeError),
);
