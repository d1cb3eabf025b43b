import { describe, expect, test } from 'vitest';
import type { Gravity } from '../../domain/gravity';
import { gravityAt, lookClose, stemAt } from './stem';

const at = (gravity: number, division: 10 | 20 = 10, perThousandth = 6) =>
  stemAt({ at: gravity as Gravity, division, perThousandth, above: 60, below: 60 });
const numbers = ({ lines }: ReturnType<typeof stemAt>) =>
  lines.filter(({ size }) => size === 'long').map(({ gravity }) => gravity);

describe('a stem that floats', () => {
  test('is crossed by the surface at its gravity', () => expect(at(9960).y(9960 as Gravity)).toBe(0));

  test('has lower numbers higher up: it sinks deeper the lighter the wine is', () =>
    expect(at(9960).y(9900 as Gravity)).toBeLessThan(0));

  test('has a line for every division, and a number at every fifth', () => {
    const stem = at(9960);
    expect(stem.lines.map(({ gravity }) => gravity)).toEqual([
      9870, 9880, 9890, 9900, 9910, 9920, 9930, 9940, 9950, 9960, 9970, 9980, 9990, 10_000, 10_010, 10_020,
      10_030, 10_040, 10_050, 10_060,
    ]);
    expect(numbers(stem)).toEqual([9900, 9950, 10_000, 10_050]);
  });

  test('a scale of 0.002 has half the lines', () => {
    const stem = at(9960, 20);
    expect(stem.lines).toHaveLength(10);
    expect(numbers(stem)).toEqual([9900, 10_000]);
  });

  test('leaves lines out where they would run into one another', () =>
    expect(at(10_300, 10, 1).lines.map(({ gravity }) => gravity % 50)).not.toContain(10));

  test('stands wider where the numbers are low', () => {
    const { y } = at(10_400);
    const gap = (low: number) => y((low + 100) as Gravity) - y(low as Gravity);
    expect(gap(9900)).toBeGreaterThan(gap(10_900) * 1.15);
  });

  test('is found again by height', () =>
    expect(gravityAt(at(9960).y(9910 as Gravity), 9960 as Gravity, 6)).toBeCloseTo(9910, 6));
});

describe('how close the look is', () => {
  test('close where everything lies near', () =>
    expect(lookClose(9980 as Gravity, [9960 as Gravity], 120, 60)).toBe(6));

  test('far enough away to hold the limit above a must', () => {
    const perThousandth = lookClose(10_660 as Gravity, [9960 as Gravity], 120, 60);
    const { y } = stemAt({ at: 10_660 as Gravity, division: 10, perThousandth, above: 120, below: 60 });
    expect(y(9960 as Gravity)).toBeGreaterThan(-120);
    expect(perThousandth).toBeGreaterThan(1.4);
  });
});
