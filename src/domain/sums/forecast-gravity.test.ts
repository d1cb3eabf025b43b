import { describe, expect, test } from 'vitest';
import { near } from '../../../tests/reference/near';
import { forecastGravity } from './forecast-gravity';

const SOUND = [1.085, 1.072, 1.045, 1.026, 1.011, 1.001, 0.995, 0.993, 0.993];
const daily = (gravities: readonly number[], celsius: (day: number) => number = () => 22) =>
  gravities.map((gravity, day) => ({ day, gravity, celsius: celsius(day) }));
const after = (days: number) => forecastGravity(daily(SOUND.slice(0, days + 1)), { limit: 0.998 });
const width = (forecast: ReturnType<typeof after>) => {
  const { limitReached } = forecast;
  return limitReached.code === 'expected' ? (limitReached.high ?? Infinity) - limitReached.low : 0;
};

describe('a sound ferment', () => {
  test('is anyone’s guess on the day of the yeast', () => {
    const { limitReached, gateOpens, warnings } = after(0);
    expect(limitReached).toEqual({
      code: 'expected',
      value: near(7, -0.3),
      low: near(4, -0.3),
      high: near(14, -0.6),
    });
    expect(gateOpens.code).toBe('expected');
    expect(warnings).toEqual([]);
  });

  test('is better known with every reading', () => {
    const widths = [0, 2, 4, 5].map((day) => width(after(day)));
    expect(widths).toEqual(widths.toSorted((a, b) => b - a));
    expect(width(after(5))).toBeLessThan(2);
  });

  test('is foreseen to half a day two days ahead', () =>
    expect(after(4).limitReached).toMatchObject({ code: 'expected', value: near(5.5, 0) }));

  test('has reached the limit once a reading says so', () =>
    expect(after(7).limitReached).toEqual({ code: 'reached', day: 6 }));

  test('opens the gate two days after it stopped falling, and not before the sheet’s day', () => {
    const gate = (minimumDays: number) => forecastGravity(daily(SOUND), { minimumDays }).gateOpens;
    expect(gate(0)).toMatchObject({ code: 'expected', value: near(8.5, 0) });
    expect(gate(14)).toEqual({ code: 'expected', value: 14, low: 14, high: 14 });
  });

  test('draws a curve from the last reading on, that never rises and always has its value inside', () => {
    const { curve } = after(4);
    expect(curve.map(({ day }) => day)).toEqual(Array.from({ length: 15 }, (_, ahead) => 4 + ahead));
    for (const [index, { value, low, high }] of curve.entries()) {
      expect(low).toBeLessThan(value);
      expect(high).toBeGreaterThan(value);
      expect(value).toBeLessThanOrEqual((curve[index - 1]?.value ?? 2) + 1e-9);
    }
  });

  test('does not mind the order in which its readings are given', () =>
    expect(forecastGravity(daily(SOUND).toReversed())).toEqual(forecastGravity(daily(SOUND))));

  test('may be joined late, when its start is told', () => {
    const joined = daily(SOUND).slice(3, 6);
    expect(forecastGravity(joined, { start: 1.085 }).limitReached).toMatchObject({
      code: 'expected',
      value: near(6.2, -0.3),
    });
  });
});

describe('a stuck ferment', () => {
  const STUCK = [...SOUND.slice(0, 5), 1.009, 1.008, 1.008];
  const warned = (days: number) => forecastGravity(daily(STUCK.slice(0, days + 1))).warnings;

  test('gives no alarm while it falls', () => expect(warned(4)).toEqual([]));

  test('is called a stall before the house rule could', () =>
    expect(warned(6)).toMatchObject([{ code: 'stall' }]));

  test('is expected to rest where it is', () => {
    const [stall] = warned(7);
    expect(stall).toMatchObject({ code: 'stall', rest: { value: near(1.007, 2) } });
    expect(forecastGravity(daily(STUCK)).limitReached).toEqual({ code: 'not-expected' });
  });
});

describe('a ferment in the cold', () => {
  const early = SOUND.slice(0, 4);

  test('says so, and how many days it costs', () => {
    const { warnings } = forecastGravity(daily(early, (day) => (day < 3 ? 22 : 14)));
    expect(warnings).toEqual([{ code: 'cold', celsius: 14, warmEnough: 18, daysLost: near(2, -0.5) }]);
  });

  test('is later than one in the warm', () => {
    const value = (celsius: number) => {
      const { limitReached } = forecastGravity(daily(early, (day) => (day < 3 ? 22 : celsius)));
      return limitReached.code === 'expected' ? limitReached.value : Infinity;
    };
    expect(value(14)).toBeGreaterThan(value(22) + 1);
  });

  test('is seen coming while it is still warm enough', () =>
    expect(forecastGravity(daily(early, (day) => 23 - day * 1.2)).warnings).toEqual([
      { code: 'cooling', celsius: near(19.4, 9), warmEnough: 18, inDays: near(1.17, 2) },
    ]));
});

test.each([
  ['no reading', []],
  ['a day before the yeast', [{ day: -1, gravity: 1.09, celsius: 22 }]],
  ['a gravity that no must has', [{ day: 0, gravity: 1.2, celsius: 22 }]],
  ['boiling wine', [{ day: 0, gravity: 1.09, celsius: 90 }]],
])('%s is refused', (_, readings) => expect(() => forecastGravity(readings)).toThrow(RangeError));
