import { expect, test } from 'vitest';
import { stepped } from './stepped';

const HALF_TO_TWICE = { least: 0.5, most: 2 };

test.each<[number, 1 | -1, number]>([
  [1, 1, 1.1],
  [1, -1, 0.9],
  [1.1, 1, 1.2],
  [0.3, -1, 0.5],
  [0.5, -1, 0.5],
  [1.9, 1, 2],
  [2, 1, 2],
  [1.23, 1, 1.3],
  [1.23, -1, 1.1],
])('from %d, a step of %d leads to %d', (value, by, next) =>
  expect(stepped(value, by, HALF_TO_TWICE)).toBe(next),
);
