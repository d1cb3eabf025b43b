import { expect, test } from 'vitest';
import { rootBetween } from './root-between';

test.each([
  ['a line', (x: number) => x - 0.3, 0, 1, 0.3],
  ['a parabola', (x: number) => x * x - 2, 0, 2, Math.SQRT2],
  ['a steep curve', (x: number) => Math.exp(20 * x) - 5, 0, 1, Math.log(5) / 20],
  ['an end', (x: number) => x, 0, 1, 0],
  ['the other end', (x: number) => x - 1, 0, 1, 1],
])('finds where %s crosses zero', (_, f, from, to, root) =>
  expect(rootBetween(f, from, to)).toBeCloseTo(root, 12),
);

test('refuses a bracket that holds no root', () =>
  expect(() => rootBetween((x) => x + 1, 0, 1)).toThrow(new RangeError('no root between 0 and 1')));

test('refuses a function that is not a number', () =>
  expect(() => rootBetween(() => Number.NaN, 0, 1)).toThrow(RangeError));
