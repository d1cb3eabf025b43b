import { expect, test } from 'vitest';
import { brixFromGravity } from './brix-from-gravity';

test.each([
  [1.09, 21.58],
  [1.05, 12.4],
  [1, 0],
  [0.996, -1.04],
])('%d is %d °Brix', (gravity, brix) => expect(brixFromGravity(gravity)).toBeCloseTo(brix, 2));

test.each([0.979, 1.401])('%d is refused', (gravity) =>
  expect(() => brixFromGravity(gravity)).toThrow(RangeError),
);
