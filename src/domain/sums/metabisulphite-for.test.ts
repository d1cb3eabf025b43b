import { expect, test } from 'vitest';
import { metabisulphiteFor } from './metabisulphite-for';

test('50 mg/L in 23 litres takes two grams', () =>
  expect(metabisulphiteFor({ rise: 50, litres: 23 })).toBeCloseTo(1.995, 3));

test.each([
  [-1, 23],
  [501, 23],
  [50, 0],
])('%d mg/L in %d litres is refused', (rise, litres) =>
  expect(() => metabisulphiteFor({ rise, litres })).toThrow(RangeError),
);
