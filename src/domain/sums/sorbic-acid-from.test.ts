import { expect, test } from 'vitest';
import { sorbicAcidFrom } from './sorbic-acid-from';

test('6.16 g of potassium sorbate in 23 litres is 200 mg/L of the acid', () =>
  expect(sorbicAcidFrom({ sorbateGrams: 6.163, litres: 23 })).toBeCloseTo(200, 1));

test.each([
  [-1, 23],
  [101, 23],
  [6, 0],
])('%d g in %d litres is refused', (sorbateGrams, litres) =>
  expect(() => sorbicAcidFrom({ sorbateGrams, litres })).toThrow(RangeError),
);
