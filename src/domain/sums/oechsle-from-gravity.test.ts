import { expect, test } from 'vitest';
import { oechsleFromGravity } from './oechsle-from-gravity';

test.each([
  [1.085, 85],
  [1, 0],
  [0.996, -4],
])('%d is %d °Oechsle', (gravity, oechsle) => expect(oechsleFromGravity(gravity)).toBeCloseTo(oechsle, 9));

test.each([0.979, 1.401])('%d is refused', (gravity) =>
  expect(() => oechsleFromGravity(gravity)).toThrow(RangeError),
);
