import { expect, test } from 'vitest';
import { warmDays, yeastRate } from './warm-days';

test.each([
  [12, 0.44],
  [22, 1],
  [30, 1.53],
  [4, 0],
  [38, 0.1],
])('at %d °C yeast works %d times as fast as at 22', (celsius, rate) =>
  expect(yeastRate(celsius)).toBeCloseTo(rate, 1),
);

test('a day is a day at 22 °C, and less in the cold', () => {
  const at = (celsius: number) => warmDays([0, 1, 3].map((day) => ({ day, celsius })));
  expect(at(22).map((warm) => Math.round(warm * 10) / 10)).toEqual([0, 1, 3]);
  expect(at(12)[2]).toBeCloseTo(3 * yeastRate(12), 9);
});

test('before the first known warmth it was as warm as then', () =>
  expect(warmDays([{ day: 2, celsius: 22 }])[0]).toBeCloseTo(2, 1));
