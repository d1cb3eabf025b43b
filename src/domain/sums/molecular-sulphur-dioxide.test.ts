import { expect, test } from 'vitest';
import { molecularSulphurDioxide } from './molecular-sulphur-dioxide';

test.each([
  [3.0, 6.1],
  [3.4, 2.5],
  [3.8, 1.0],
])('at pH %d, %d % of the free is molecular', (pH, percent) =>
  expect(molecularSulphurDioxide({ free: 100, pH }).value).toBeCloseTo(percent, 1),
);

test('in wine of 12 % vol it may be 1.4 times as much, never less', () => {
  const { value, low, high } = molecularSulphurDioxide({ free: 32, pH: 3.4 });
  expect(low).toBe(value);
  expect(high / value).toBeCloseTo(1.4, 1);
});

test('in juice it may be less', () => {
  const { value, low, high } = molecularSulphurDioxide({ free: 32, pH: 3.4, alcohol: 0 });
  expect(high).toBe(value);
  expect(low).toBeLessThan(value);
});

test.each([
  [-1, 3.4, 12],
  [501, 3.4, 12],
  [32, 2.7, 12],
  [32, 4.3, 12],
  [32, 3.4, 21],
])('%d mg/L at pH %d and %d % vol is refused', (free, pH, alcohol) =>
  expect(() => molecularSulphurDioxide({ free, pH, alcohol })).toThrow(RangeError),
);
