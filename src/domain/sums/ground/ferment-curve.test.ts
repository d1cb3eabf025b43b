import { describe, expect, test } from 'vitest';
import { shareLeft, whenLeft } from './ferment-curve';

const usual = { rate: 0.3, lag: 1.2, ease: 0.6 };
const courses = [0.05, 0.3, 1].flatMap((rate) =>
  [0.3, 1.2, 4].flatMap((lag) => [0.12, 0.6, 3].map((ease) => ({ rate, lag, ease }))),
);

test('everything is left at the outset, nearly all during the lag, hardly any after ten warm days', () =>
  expect([0, 0.5, 1, 4, 10].map((warm) => Number(shareLeft(usual, warm).toFixed(2)))).toEqual([
    1, 0.99, 0.97, 0.39, 0,
  ]));

describe.each(courses)('%o', (course) => {
  test('falls without end', () => {
    const shares = [0, 0.5, 1, 2, 4, 8, 16].map((warm) => shareLeft(course, warm));
    expect(shares).toEqual(shares.toSorted((a, b) => b - a));
  });

  test.each([0.9, 0.5, 0.1, 0.01])('comes to a share of %d when it says it does', (share) =>
    expect(shareLeft(course, whenLeft(course, share))).toBeCloseTo(share, 9),
  );
});

test('a thousand days are no trouble', () => expect(shareLeft(usual, 1000)).toBeCloseTo(0, 9));
