import { expect, test } from 'vitest';
import { near } from '../../../tests/reference/near';
import { bottlesFrom } from './bottles-from';

test.each([
  [23, 0.25, 750, { bottles: 30, corks: 32, leftMl: 250 }],
  [22.712, 0.25, 750, { bottles: 29, corks: 31, leftMl: 712 }],
  [22.5, 0, 750, { bottles: 30, corks: 32, leftMl: 0 }],
  [22.5, 0, 375, { bottles: 60, corks: 63, leftMl: 0 }],
  [1.13, 0.38, 750, { bottles: 1, corks: 3, leftMl: 0 }],
  [0.5, 0.25, 750, { bottles: 0, corks: 0, leftMl: 250 }],
  [0.1, 0.25, 750, { bottles: 0, corks: 0, leftMl: 0 }],
])('%d litres less %d in bottles of %d ml: %o', (litres, lossLitres, bottleMl, { leftMl, ...whole }) =>
  expect(bottlesFrom({ litres, lossLitres, bottleMl })).toEqual({
    ...whole,
    leftMl: near(leftMl, 6),
  }),
);

test.each([
  [-1, 0],
  [101, 0],
  [23, -1],
])('%d litres less %d is refused', (litres, lossLitres) =>
  expect(() => bottlesFrom({ litres, lossLitres })).toThrow(RangeError),
);
