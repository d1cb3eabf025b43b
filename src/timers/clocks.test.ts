import { describe, expect, test } from 'vitest';
import type { Instant } from '../domain/unit';
import { afterReload, agree, secondsLate, type Anchor, type Look } from './clocks';
import { pageClock } from './page-clock';

const at = (wall: number, monotonic: number): Look => ({ wall: wall as Instant, monotonic });
const anchored = (wall: number, monotonic: number, skew = 0): Anchor => ({ ...at(wall, monotonic), skew });
const START = anchored(1_000_000, 0);
const HOUR = 3_600_000;

describe('two clocks', () => {
  test.each([
    ['that agree are believed', at(1_060_000, 60_000), false, { now: 1_060_000, anchor: START }],
    [
      'that drift by a second are believed by the even one',
      at(1_061_000, 60_000),
      false,
      { now: 1_060_000, anchor: START },
    ],
    [
      'after a sleep: the wall is right',
      at(1_600_000, 1000),
      true,
      { now: 1_600_000, anchor: anchored(1_600_000, 1000), odd: 'slept' },
    ],
    [
      'when someone sets the wall clock on, it is not believed',
      at(4_600_000, 1000),
      false,
      { now: 1_001_000, anchor: anchored(1_001_000, 1000, 3_599_000), odd: 'clock set' },
    ],
    [
      'when someone sets it back, neither',
      at(400_000, 1000),
      false,
      { now: 1_001_000, anchor: anchored(1_001_000, 1000, -601_000), odd: 'clock set' },
    ],
  ])('%s', (_, look, outOfSight, expected) => expect(agree(START, look, outOfSight)).toEqual(expected));
});

describe('after a reload only the wall is left', () => {
  test.each([
    ['a time after the last entry is believed', 5 * HOUR, undefined, 'believe'],
    ['a time before it is not', HOUR - 1, undefined, 'went back'],
    ['a deadline four minutes ago is believed', 2 * HOUR, 2 * HOUR - 240_000, 'believe'],
    ['a deadline four hours ago is asked about', 6 * HOUR, 2 * HOUR, 'long overdue'],
  ] as const)('%s', (_, now, deadline, expected) =>
    expect(afterReload(HOUR as Instant, now as Instant, deadline as Instant | undefined)).toBe(expected),
  );
});

test.each([
  [1000, 0],
  [999, 0],
  [4999, 3],
  [241_000, 240],
])('a deadline of 1000 is, at %i ms, %i seconds late', (now, late) =>
  expect(secondsLate(1000 as Instant, now as Instant)).toBe(late),
);

describe('the clock of a page', () => {
  test('runs on through drift, sleep and a clock that was set, and never back', () => {
    const looks: [Look, boolean][] = [
      [at(1_000_000, 0), false],
      [at(1_010_100, 10_000), false],
      [at(400_000, 20_000), false],
      [at(410_000, 30_000), false],
      [at(1_410_000, 31_000), true],
      [at(1_300_000, 32_000), true],
    ];
    const odd: string[] = [];
    let turn = 0;
    const device = { look: () => looks[turn]?.[0] ?? START, wasOutOfSight: () => looks[turn]?.[1] ?? false };
    const now = pageClock(device, (what) => odd.push(what));
    const seen = looks.map((_, index) => {
      turn = index;
      return now();
    });
    expect(seen).toEqual([1_000_000, 1_010_000, 1_020_000, 1_030_000, 2_030_000, 2_030_000]);
    expect(odd).toEqual(['clock set', 'slept', 'slept']);
  });
});
