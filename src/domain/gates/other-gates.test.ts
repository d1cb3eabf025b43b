import { describe, expect, test } from 'vitest';
import {
  answersTold,
  codesOf,
  earliestOf,
  momentAt,
  readingTold,
  type Told,
} from '../../../tests/story/told';
import type { Gravity } from '../gravity';
import type { Instrument } from '../reading';
import type { Celsius, Litres } from '../unit';
import { bottlesReady, type Bottles } from './bottles-ready';
import { boxComplete, heldBack, isTight, type Box } from './box-complete';
import { fallenBright } from './fallen-bright';
import { gasGone } from './gas-gone';
import { litresOver, mustMixed } from './must-mixed';
import { mustWarmEnough, stricterPitch } from './must-warm-enough';
import { wineStill } from './wine-still';

type Said = ReturnType<typeof codesOf>;

describe('the box is complete', () => {
  const instrument: Instrument = { division: 10, calibratedAt: 20, offset: 0 as Gravity };
  const box: Box = { missing: [], instrument, brim: 30 as Litres, batch: 23 as Litres };
  test.each<[story: string, given: Partial<Box>, said: Said]>([
    ['with everything there', {}, 'open'],
    ['not before it was looked at', { missing: undefined }, ['box-not-checked']],
    ['not with a sachet missing', { missing: ['Wine yeast'] }, ['sachets-missing']],
    ['not without a checked hydrometer', { instrument: undefined }, ['hydrometer-not-checked']],
    ['not in a vessel below 1.08 times the batch', { brim: 24.8 as Litres }, ['vessel-too-small']],
    ['at 1.08 times the batch', { brim: 24.84 as Litres }, 'open'],
  ])('%s', (_, given, said) => expect(codesOf(boxComplete({ ...box, ...given }))).toEqual(said));

  test.each([
    ['nothing at 1.25 times the batch', 28.75, 0],
    ['what makes room for foam in a tighter one', 27.5, 1],
    ['a tenth of the batch at the most', 24.9, 2.3],
  ])('holds back %s', (_, brim, litres) =>
    expect(heldBack(brim as Litres, 23 as Litres)).toBeCloseTo(litres, 9),
  );

  test('calls a vessel tight below 1.25 times the batch', () =>
    expect([28.74, 28.75].map((brim) => isTight(brim as Litres, 23 as Litres))).toEqual([true, false]));
});

describe('the must is mixed', () => {
  const mixed = (gravities: number[], stirredSeconds = 240) =>
    mustMixed({
      readings: gravities.map((gravity, hours) => readingTold({ gravity, hours }, hours)),
      stirredSeconds,
      stirSeconds: 240,
      range: { lowest: 10620 as Gravity, highest: 10720 as Gravity },
      batch: 23 as Litres,
    });
  test.each<[story: string, gravities: number[], seconds: number, said: Said]>([
    ['in the range, both ends included', [10620], 240, 'open'],
    ['not without a reading', [], 240, ['no-start-reading']],
    ['not a second short of the timer', [10680], 239, ['under-stirred']],
    ['not below the range at the first reading', [10619], 240, ['start-outside']],
    ['not above it', [10721], 240, ['start-outside']],
    ['recorded and on when the second is outside still', [10590, 10600], 240, 'open'],
  ])('%s', (_, gravities, seconds, said) => expect(codesOf(mixed(gravities, seconds))).toEqual(said));

  test('says by how many litres it is out: 23 L made up to 27.3 L are 4.3 L over', () => {
    const diluted = 10000 + (620 * 23) / 27.3;
    expect(
      litresOver(diluted as Gravity, { lowest: 10620 as Gravity, highest: 10720 as Gravity }, 27.3 as Litres),
    ).toBeCloseTo(4.3, 6);
  });
});

describe('the must is warm enough for yeast', () => {
  const range = stricterPitch({ lowest: 15 as Celsius, highest: 30 as Celsius });
  test('within house limits, however wide the sheet', () =>
    expect(range).toEqual({ lowest: 18, highest: 28 }));
  test.each<[must: number | undefined, said: Said]>([
    [undefined, ['must-not-measured']],
    [17.9, ['must-too-cold']],
    [18, 'open'],
    [28, 'open'],
    [28.1, ['must-too-warm']],
  ])('%s °C: %s', (must, said) =>
    expect(codesOf(mustWarmEnough(must as Celsius | undefined, range))).toEqual(said),
  );
});

describe('the gas is gone', () => {
  test.each<[story: string, livelier: boolean[], said: Said]>([
    ['not untested', [], ['gas-not-tested']],
    ['not after one test', [false], ['gas-not-tested']],
    ['after two', [false, false], 'open'],
    ['not when the last was livelier than water', [false, false, true], ['gassy', 'gas-not-tested']],
    ['not on one pass after that', [true, false], ['gas-not-tested']],
    ['on two passes after that', [true, false, false], 'open'],
  ])('%s', (_, answers, said) =>
    expect(codesOf(gasGone(answersTold('gas', answers), momentAt(0).at))).toEqual(said),
  );

  test('counting only tests since the last stir', () =>
    expect(codesOf(gasGone(answersTold('gas', [false, false]), momentAt(1).at))).toEqual(['gas-not-tested']));
});

describe('the wine has fallen bright', () => {
  const looked = (looks: [hours: number, yes: boolean][], now: number) =>
    fallenBright({
      judgements: looks.flatMap(([hours, yes]) => answersTold('clear', [yes], hours)),
      clearingSince: momentAt(0),
      minimumDays: 14,
      now: momentAt(now),
    });
  const day = 24;
  test.each<[story: string, looks: [number, boolean][], now: number, said: Said]>([
    [
      'when clear on two days, after the sheet’s days',
      [
        [13 * day, true],
        [14 * day, true],
      ],
      14 * day,
      'open',
    ],
    ['not on one', [[14 * day, true]], 14 * day, ['not-looked-at']],
    [
      'not on two looks of one day',
      [
        [14 * day, true],
        [14 * day + 3, true],
      ],
      14 * day + 3,
      ['not-looked-at'],
    ],
    [
      'not before the sheet’s days',
      [
        [12 * day, true],
        [13 * day, true],
      ],
      13 * day,
      ['clearing-too-short'],
    ],
    [
      'not when the last look was cloudy',
      [
        [13 * day, true],
        [14 * day, true],
        [15 * day, false],
      ],
      15 * day,
      ['cloudy', 'not-looked-at'],
    ],
    [
      'on two clear days after a cloudy one',
      [
        [14 * day, false],
        [15 * day, true],
        [16 * day, true],
      ],
      16 * day,
      'open',
    ],
  ])('%s', (_, looks, now, said) => expect(codesOf(looked(looks, now))).toEqual(said));

  test.each<[story: string, looks: [number, boolean][], now: number, earliest: number]>([
    ['tomorrow, when it was never looked at', [], 20 * day, 20 * day + 12],
    ['tomorrow, after a first clear look today', [[20 * day, true]], 20 * day + 1, 20 * day + 12],
    ['now, when the first clear look was yesterday', [[19 * day, true]], 20 * day, 20 * day],
    [
      'when the sheet’s day begins',
      [
        [1 * day, true],
        [2 * day, true],
      ],
      3 * day,
      14 * day - 12,
    ],
  ])('could pass %s', (_, looks, now, earliest) => expect(earliestOf(looked(looks, now))).toBe(earliest));
});

describe('the wine is still', () => {
  const week = 7 * 24;
  const rested = (readings: Told[], gas: boolean[], now = week + 5) => {
    const [baseline, ...later] = readings.map(readingTold);
    return wineStill({
      baseline,
      readings: later,
      judgements: answersTold('gas', gas, week + 1),
      now: momentAt(now),
    });
  };
  const base: Told = { gravity: 9945, hours: 0 };
  test.each<[story: string, readings: Told[], gas: boolean[], said: Said]>([
    ['unchanged a week later, and no gas', [base, { gravity: 9940, hours: week }], [false, false], 'open'],
    ['not without a baseline', [], [], ['no-baseline']],
    [
      'not when the baseline was struck',
      [
        { ...base, struck: true },
        { gravity: 9945, hours: week },
      ],
      [false, false],
      ['no-baseline'],
    ],
    [
      'not an hour short of a week',
      [base, { gravity: 9945, hours: week - 1 }],
      [false, false],
      ['no-reading-since-baseline'],
    ],
    ['not when it fell by 0.0013', [base, { gravity: 9932, hours: week }], [false, false], ['still-moving']],
    [
      'not even within the week',
      [base, { gravity: 9930, hours: 30 }],
      [],
      ['still-moving', 'no-reading-since-baseline', 'gas-not-tested'],
    ],
    ['on a fall that the scale cannot show', [base, { gravity: 9933, hours: week }], [false, false], 'open'],
    ['not on a rise: read again', [base, { gravity: 9958, hours: week }], [false, false], ['reading-rose']],
    [
      'not by a reading told afterwards',
      [base, { gravity: 9945, hours: week, backDated: true }],
      [false, false],
      ['no-reading-since-baseline'],
    ],
    ['not with gas in it', [base, { gravity: 9945, hours: week }], [false, true], ['gassy']],
  ])('%s', (_, readings, gas, said) => expect(codesOf(rested(readings, gas))).toEqual(said));
});

describe('the bottles are ready', () => {
  const bottles: Bottles = {
    counted: { bottles: 30, closures: 30, threaded: false },
    wanted: 30,
    closure: 'cork',
  };
  test.each<[story: string, given: Partial<Bottles>, said: Said]>([
    ['when there are enough of both', {}, 'open'],
    ['not uncounted', { counted: undefined }, ['not-counted']],
    ['not a bottle short', { wanted: 31 }, ['too-few-bottles', 'too-few-closures']],
    [
      'never a cork in a screw thread',
      { counted: { bottles: 40, closures: 40, threaded: true } },
      ['cork-in-screw-thread'],
    ],
    [
      'a cap on a screw thread',
      { counted: { bottles: 40, closures: 40, threaded: true }, closure: 'screw cap' },
      'open',
    ],
  ])('%s', (_, given, said) => expect(codesOf(bottlesReady({ ...bottles, ...given }))).toEqual(said));
});
