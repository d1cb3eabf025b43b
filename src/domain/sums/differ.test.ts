import { expect, test } from 'vitest';
import { differ } from './differ';

test.each([
  [0.994, 0.994, 0.001, false],
  [0.996, 0.9948, 0.001, false],
  [0.996, 0.9947, 0.001, true],
  [0.9947, 0.996, 0.001, true],
  [0.996, 0.9941, 0.002, false],
  [0.996, 0.994, 0.002, true],
])('%d and %d on a scale of %d: %s', (a, b, division, differs) =>
  expect(differ({ gravity: a, division }, { gravity: b, division })).toBe(differs),
);
