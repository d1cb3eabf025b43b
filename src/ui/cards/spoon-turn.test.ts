import { describe, expect, test } from 'vitest';
import { spoonTurn } from './spoon-turn';

const STEP = 0.01;
const isForth = (run: number, reverseSeconds?: number) =>
  spoonTurn(run + STEP, reverseSeconds) > spoonTurn(run, reverseSeconds);

describe('a spoon that is turned every 30 seconds', () => {
  test.each([
    [0, true],
    [29.9, true],
    [30, false],
    [59.9, false],
    [60, true],
    [91, false],
  ])('after %d seconds it goes forth: %s', (run, forth) => expect(isForth(run, 30)).toBe(forth));

  test('does not jump where it turns', () =>
    expect(Math.abs(spoonTurn(30.001, 30) - spoonTurn(29.999, 30))).toBeLessThan(1));
});

test('a spoon that is never turned goes one way', () => expect(isForth(500)).toBe(true));
