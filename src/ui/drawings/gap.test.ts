import { describe, expect, test } from 'vitest';
import { depthOf } from './gap';

describe('the gap below the stopper', () => {
  test('is drawn true to its millimetres', () => expect(depthOf(50)).toBeCloseTo(2 * depthOf(25), 10));
  test('is never too small to see', () => expect(depthOf(0)).toBe(10));
  test('ends where the drawing ends', () => expect(depthOf(300)).toBe(190));
});
