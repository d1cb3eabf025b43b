import { describe, expect, test } from 'vitest';
import { barScale } from './bar-scale';

describe('a scale of pressure', () => {
  test.each([
    [0.3, 0.5],
    [1.9, 2],
    [6, 6],
    [10.6, 12],
    [29, 30],
  ])('up to %d bar ends at %d', (highest, most) => expect(barScale(highest, 0, 300).most).toBe(most));

  test.each([0.1, 1, 3, 7, 11, 30])(
    'has seven ticks at most for %d bar, from nothing to its end',
    (highest) => {
      const { ticks, most } = barScale(highest, 0, 300);
      expect(ticks.length).toBeLessThanOrEqual(7);
      expect([ticks[0], ticks.at(-1)]).toEqual([0, most]);
    },
  );

  test('puts twice the pressure twice as far', () => {
    const { x } = barScale(10, 40, 340);
    expect(x(0)).toBe(40);
    expect(x(8) - 40).toBeCloseTo(2 * (x(4) - 40), 9);
    expect([x(-1), x(99)]).toEqual([40, 340]);
  });
});
