import { describe, expect, test } from 'vitest';
import type { Gravity } from '../../domain/gravity';
import { gravityScale } from './gravity-scale';

const scaleOf = (height: number, ...gravities: number[]) => gravityScale(gravities as Gravity[], 0, height);
const scale = (...gravities: number[]) => scaleOf(240, ...gravities);
const numbers = ({ lines }: ReturnType<typeof scale>) =>
  lines.filter(({ long }) => long).map(({ gravity }) => gravity);

describe('a piece of scale', () => {
  test('puts lower gravities lower', () => {
    const { y } = scale(10_660, 9960);
    expect(y(10_660 as Gravity)).toBeLessThan(y(9960 as Gravity));
  });

  test('holds a whole ferment in hundredths of two', () =>
    expect(numbers(scale(10_660, 9960))).toEqual([10_800, 10_600, 10_400, 10_200, 10_000, 9800]));

  test('comes near when the readings lie close', () =>
    expect(numbers(scale(9960, 9940))).toEqual([9980, 9970, 9960, 9950, 9940, 9930, 9920]));

  test.each([80, 96, 150, 400])('that is %i high has as many numbers as can be read', (height) => {
    const { y, lines } = scaleOf(height, 10_660, 9960);
    const heights = lines.filter(({ long }) => long).map(({ gravity }) => y(gravity));
    const apart = heights.slice(1).map((each, n) => each - heights[n]!);
    expect(Math.min(...apart)).toBeGreaterThanOrEqual(18);
    expect(heights.length).toBeGreaterThanOrEqual(3);
  });

  test('keeps room above and below', () => {
    const { highest, lowest } = scale(9960, 9960);
    expect({ highest, lowest }).toEqual({ highest: 9980, lowest: 9940 });
  });

  test('has four short lines between two numbers', () => {
    const { lines } = scale(9960, 9940);
    expect(lines.slice(0, 6).map(({ long }) => long)).toEqual([true, false, false, false, false, true]);
  });
});
