import { expect, test } from 'vitest';
import { bottlePressure } from './bottle-pressure';

const bottle = { headspaceMl: 15, bottleMl: 750, dissolved: 1.4 };

test.each([
  [0, 20, -0.07],
  [2, 20, 0.56],
  [4, 20, 1.19],
  [8, 20, 2.44],
  [2, 30, 1.02],
  [8, 30, 3.45],
  [20, 10, 4.37],
])('%d g/L of sugar left, kept at %d °C: %d bar over', (sugar, celsius, bar) =>
  expect(bottlePressure({ ...bottle, sugar, celsius })).toBeCloseTo(bar, 2),
);

test('a division of 0.001 of gravity is two thirds of a bar', () =>
  expect(
    bottlePressure({ ...bottle, sugar: 4.14, celsius: 20 }) -
      bottlePressure({ ...bottle, sugar: 2, celsius: 20 }),
  ).toBeCloseTo(0.67, 2));

test.each([
  { sugar: -1 },
  { sugar: 31 },
  { celsius: -1 },
  { celsius: 41 },
  { headspaceMl: 201 },
  { bottleMl: 99 },
  { dissolved: 6 },
  { alcohol: 21 },
])('%o is refused', (wrong) =>
  expect(() => bottlePressure({ ...bottle, sugar: 4, celsius: 20, ...wrong })).toThrow(RangeError),
);
