import { expect, test } from 'vitest';
import { barsOf } from './ear-shown';

test.each([
  [-90, 0],
  [-60, 0],
  [-35, 2],
  [-10, 4],
  [0, 4],
])('at %s dB below full scale %s of 4 bars are filled', (decibels, bars) =>
  expect(barsOf(decibels, 4)).toBe(bars),
);
