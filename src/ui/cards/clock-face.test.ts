import { describe, expect, test } from 'vitest';
import { digits, turnAt } from './clock-face';

describe('the digits', () => {
  test.each([
    [222, '3:42'],
    [60, '1:00'],
    [9, '0:09'],
    [0, '0:00'],
    [-30, '0:00'],
    [3599.2, '1:00:00'],
    [3909, '1:05:09'],
  ])('%d seconds are %s', (seconds, shown) => expect(digits(seconds)).toBe(shown));
});

describe('the turns of a stir of 100 seconds, turned every 30', () => {
  test.each([
    [0, { other: false, nextIn: 30 }],
    [12, { other: false, nextIn: 18 }],
    [30, { other: true, nextIn: 30 }],
    [60, { other: false, nextIn: 30 }],
    [95, { other: true }],
  ])('after %d seconds', (run, turn) => expect(turnAt(run, 100, 30)).toEqual(turn));
});
