import { expect, test } from 'vitest';
import { simulatedFerment } from '../simulated-ferment';
import { sugarLeft } from './sugar-left';

test.each([
  [1.09, 218, 5],
  [1.05, 128, 5],
  [1.01, 40, 5],
  [0.996, 9, 5],
])('from 1.090, %d holds about %d g/L, give or take %d', (now, sugar, by) => {
  const { value, high } = sugarLeft({ start: 1.09, now });
  expect(value).toBeCloseTo(sugar, -0.3);
  expect(high - value).toBeCloseTo(by, -0.3);
});

test('a dry wine may hold none, and the interval still says how much it could', () => {
  const { value, low, high } = sugarLeft({ start: 1.09, now: 0.992 });
  expect({ value, low }).toEqual({ value: 0, low: 0 });
  expect(high).toBeGreaterThan(3);
});

test('a division of 0.001 hides about 2 g/L near dryness', () =>
  expect(
    sugarLeft({ start: 1.09, now: 0.998 }).value - sugarLeft({ start: 1.09, now: 0.997 }).value,
  ).toBeCloseTo(2.14, 0));

test('simulated wines, whose musts and yeasts differ, are within it nineteen times in twenty', () => {
  const wines = Array.from({ length: 40 }, (_, seed) =>
    simulatedFerment('sound', seed, 1.05 + (seed % 6) / 100, 10),
  );
  const held = wines.flatMap((hours) =>
    [2, 4, 6, 9].map((day) => {
      const { gravity = 1, sugar = 0 } = hours[day * 24] ?? {};
      const { low, high } = sugarLeft({ start: hours[0]?.gravity ?? 1, now: gravity });
      return sugar >= low && sugar <= high;
    }),
  );
  expect(held.filter(Boolean).length / held.length).toBeGreaterThan(0.95);
});

test.each([
  [0.99, 0.99],
  [1.09, 0.97],
])('from %d to %d is refused', (start, now) => expect(() => sugarLeft({ start, now })).toThrow(RangeError));
