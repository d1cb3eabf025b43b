import { expect, test } from 'vitest';
import { lengthOf, overlapOf, spanOf } from './spans';

test('a span runs from the first to the last, and is nothing where there are none', () => {
  expect(
    spanOf([
      { from: 1, to: 2 },
      { from: 4, to: 7 },
    ]),
  ).toEqual({ from: 1, to: 7 });
  expect(lengthOf({ from: 1, to: 7 })).toBe(6);
  expect(spanOf([])).toBeUndefined();
});

test.each([
  ['in part', { from: 3, to: 9 }, 2],
  ['within', { from: 2, to: 3 }, 1],
  ['not at all', { from: 5, to: 6 }, 0],
  ['far from it', { from: 8, to: 9 }, 0],
])('two stretches run side by side %s', (_, other, seconds) => {
  expect(overlapOf({ from: 1, to: 5 }, other)).toBe(seconds);
  expect(overlapOf(other, { from: 1, to: 5 })).toBe(seconds);
});
