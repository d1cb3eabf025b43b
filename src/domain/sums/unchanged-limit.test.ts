import { expect, test } from 'vitest';
import { asGravity } from '../gravity';
import { resolutionOf, type Reading } from '../reading';
import { unchangedLimit } from './unchanged-limit';

test.each([
  [0.001, 0.001, 0.0012],
  [0.002, 0.002, 0.0019],
  [0.001, 0.002, 0.0016],
])('scales of %d and %d cannot tell %d from nothing', (division, other, limit) =>
  expect(unchangedLimit(division, other)).toBe(limit),
);

test.each([
  [0.001, 10],
  [0.002, 20],
] as const)('on a scale of %d it is what the gates go by', (scale, division) =>
  expect(asGravity(unchangedLimit(scale))).toBe(resolutionOf([{ division } as Reading])),
);
