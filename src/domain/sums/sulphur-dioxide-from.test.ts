import { expect, test } from 'vitest';
import { sulphurDioxideFrom } from './sulphur-dioxide-from';

test('two grams in 23 litres add 50 mg/L', () =>
  expect(sulphurDioxideFrom({ metabisulphiteGrams: 2, litres: 23 })).toBeCloseTo(50.1, 1));

test.each([
  [-1, 23],
  [201, 23],
  [2, 0],
])('%d g in %d litres is refused', (metabisulphiteGrams, litres) =>
  expect(() => sulphurDioxideFrom({ metabisulphiteGrams, litres })).toThrow(RangeError),
);
