import { expect, test } from 'vitest';
import { gravityFromBrix } from './gravity-from-brix';

test.each([
  [0, 1],
  [12, 1.04833],
  [22, 1.09189],
  [-1.04, 0.996],
])('%d °Brix is %d', (brix, gravity) => expect(gravityFromBrix(brix)).toBeCloseTo(gravity, 5));

test.each([-5.1, 80.1])('%d °Brix is refused', (brix) =>
  expect(() => gravityFromBrix(brix)).toThrow(RangeError),
);
