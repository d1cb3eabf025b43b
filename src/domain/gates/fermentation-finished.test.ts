import { describe, expect, test } from 'vitest';
import { codesOf, earliestOf, momentAt, r, readingTold, type Told } from '../../../tests/story/told';
import type { Gravity } from '../gravity';
import type { Celsius } from '../unit';
import type { Verdict } from '../verdict';
import { fermentationFinished } from './fermentation-finished';
import type { Finish } from './finish';

const FINISH: Finish = {
  limit: 9960 as Gravity,
  readings: 2,
  hoursApart: 48,
  wineAtLeast: 18 as Celsius,
  minimumDays: 12,
};

/** Ten days before the story's noon, at 16:00: hours 0 and 48 fall on days 10 and 12. */
const PITCHED = momentAt(4 - 240);

const judged = (
  told: Told[],
  finish: Partial<Finish> = {},
  now = Math.max(0, ...told.map(({ hours }) => hours)),
): Verdict =>
  fermentationFinished({
    readings: told.map(readingTold),
    pitched: PITCHED,
    now: momentAt(now),
    finish: { ...FINISH, ...finish },
  });

const first = (verdict: Verdict): string => (verdict.open ? 'open' : verdict.because.code);

describe('fermentation is finished', () => {
  const told: [story: string, readings: Told[], said: string, finish?: Partial<Finish>][] = [
    ['not without a reading', [], 'too-few-readings'],
    ['not at 1.010', [r(0, 10100)], 'not-dry'],
    ['not on one dry reading', [r(0, 9940)], 'too-few-readings'],
    ['not on two of them 47 hours apart', [r(1, 9940), r(48, 9940)], 'too-few-readings'],
    ['on two equal dry readings 49 hours apart', [r(0, 9940), r(49, 9940)], 'open'],
    ['at exactly 48 hours', [r(0, 9940), r(48, 9940)], 'open'],
    ['at exactly the limit', [r(0, 9960), r(48, 9960)], 'open'],
    ['not a ten-thousandth above it', [r(0, 9960), r(48, 9961)], 'not-dry'],
    ['not when the older of the two was above it', [r(0, 9965), r(48, 9960)], 'was-not-dry'],
    ['on a fall of 0.0004', [r(0, 9944), r(48, 9940)], 'open'],
    ['not yet told by a fall of 0.0005', [r(0, 9945), r(48, 9940)], 'cannot-tell-yet'],
    ['not yet told by a fall of 0.0012', [r(0, 9952), r(48, 9940)], 'cannot-tell-yet'],
    ['not on a fall of 0.0013', [r(0, 9953), r(48, 9940)], 'still-falling'],
    ['not on a rise of 0.0013, which asks for a re-read', [r(0, 9940), r(48, 9953)], 'reading-rose'],
    ['on a rise that the scale cannot show', [r(0, 9940), r(48, 9952)], 'open'],
    ['not when a third between them strays', [r(0, 9940), r(24, 9958), r(48, 9940)], 'still-falling'],
    ['not in wine at 15 °C', [r(0, 9940, { wine: 15 }), r(48, 9940, { wine: 15 })], 'wine-too-cold'],
    ['not when only the last was in warm wine', [r(0, 9940, { wine: 15 }), r(48, 9940)], 'too-few-readings'],
    ['not with gas in the sample', [r(0, 9940), r(48, 9940, { degassed: false })], 'sample-gassy'],
    [
      'not by a reading that is told afterwards',
      [r(0, 9940), r(48, 9940, { backDated: true })],
      'last-reading-back-dated',
    ],
    ['by an earlier one that is', [r(0, 9940, { backDated: true }), r(48, 9940)], 'open'],
    ['not by a struck reading', [r(0, 9940, { struck: true }), r(48, 9940)], 'too-few-readings'],
    [
      'in spite of a struck one that was high',
      [r(0, 9940), r(24, 10100, { struck: true }), r(48, 9940)],
      'open',
    ],
    ['in spite of older, higher ones', [r(-100, 10100), r(0, 9940), r(48, 9940)], 'open'],
    [
      'in spite of a cold one after two good ones',
      [r(0, 9940), r(48, 9940), r(50, 9950, { wine: 15 })],
      'open',
    ],
    ['not before the sheet’s day', [r(-24, 9940), r(35, 9940)], 'too-soon'],
    ['from the first hour of the sheet’s day', [r(-24, 9940), r(36, 9940)], 'open'],
    [
      'not with two where the sheet asks three',
      [r(0, 9940), r(48, 9940)],
      'too-few-readings',
      { readings: 3 },
    ],
    ['with three', [r(0, 9940), r(24, 9940), r(48, 9940)], 'open', { readings: 3 }],
    [
      'with three, looking further back than two days',
      [r(-48, 9940), r(0, 9940), r(48, 9940)],
      'open',
      { readings: 3 },
    ],
    ['in wine at exactly 18 °C', [r(0, 9940, { wine: 18 }), r(48, 9940, { wine: 18 })], 'open'],
    [
      'not at 48 hours where the sheet asks 72',
      [r(0, 9940), r(48, 9940)],
      'too-few-readings',
      { hoursApart: 72 },
    ],
  ];
  test.each(told)('%s', (_, readings, said, finish) => expect(first(judged(readings, finish))).toBe(said));

  test('a scale of 0.002 cannot tell a fall of 0.0015, nor of 0.0019, and sees one of 0.0020', () =>
    expect(
      [15, 19, 20].map((fall) =>
        first(judged([r(0, 9960, { division: 20 }), r(48, 9960 - fall, { division: 20 })])),
      ),
    ).toEqual(['cannot-tell-yet', 'cannot-tell-yet', 'still-falling']));

  test('names every clause that fails, the most telling first', () => {
    expect(codesOf(judged([r(-40, 10100, { wine: 15 })]))).toEqual([
      'wine-too-cold',
      'too-few-readings',
      'too-soon',
    ]);
    expect(codesOf(judged([r(28, 9950), r(48, 9942)]))).toEqual(['too-few-readings']);
    expect(codesOf(judged([r(0, 9940), r(48, 9940, { degassed: false, wine: 18 })]))).toEqual([
      'sample-gassy',
      'too-few-readings',
    ]);
  });

  test('says how many readings there are, over how long', () =>
    expect([[], [r(47, 9940)], [r(40, 9940), r(47, 9940)]].map((told) => judged(told, {}, 48))).toMatchObject(
      [
        { because: { counted: 0, hours: 0 } },
        { because: { counted: 1, hours: 0 } },
        { because: { counted: 2, wanted: 2, hours: 7, hoursWanted: 48 } },
      ],
    ));
});

describe('"cannot tell yet" asks for one more reading', () => {
  const falling: Told[] = [r(0, 9950), r(48, 9942)];
  test.each([
    ['opens when it is no lower a day later', r(72, 9942), 'open'],
    ['opens when it is lower by 0.0004', r(72, 9938), 'open'],
    ['stays shut when it is lower by 0.0005', r(72, 9937), 'still-falling'],
    ['stays shut when it comes 23 hours later', r(71, 9942), 'cannot-tell-yet'],
  ])('%s', (_, more, said) => expect(first(judged([...falling, more]))).toBe(said));

  test('after two that were two days apart, and not before', () =>
    expect(first(judged([r(0, 9950), r(30, 9942), r(54, 9942)]))).toBe('cannot-tell-yet'));

  test('and for another after that when it went on falling by 0.0005', () =>
    expect(
      first(judged([...[9947, 9942].map((gravity, index) => ({ gravity, hours: index * 48 })), r(72, 9937)])),
    ).toBe('cannot-tell-yet'));
});

describe('the earliest time it could pass, in hours after noon of day 10', () => {
  test.each<[story: string, readings: Told[], hours: number, now?: number]>([
    ['two days from now while it is sweet', [r(40, 10100)], 88],
    ['two days from now, not from the sweet reading', [r(0, 10100)], 58, 10],
    ['two days from the reading, not from now', [r(0, 9940)], 48, 10],
    ['two days from one that is at the limit', [r(0, 9960)], 48, 10],
    ['a day from the last, not from now, when it cannot be told', [r(0, 9950), r(48, 9942)], 72, 60],
    ['a day from the last when it fell by just 0.0005', [r(0, 9945), r(48, 9940)], 72],
    ['at two days while it falls within them', [r(0, 9950), r(40, 9943)], 48],
    ['two days from the first of those that agree', [r(0, 9955), r(24, 9940)], 72],
    ['two days from the first when the scale cannot tell them apart', [r(0, 9952), r(24, 9940)], 48],
    ['on the sheet’s day when one more has told it', [r(-52, 9950), r(-4, 9942), r(20, 9942)], 36],
    ['two days after the one dry reading', [r(0, 9940)], 48],
    ['two days after the first dry one, not after the sweet one before', [r(0, 10100), r(10, 9940)], 58],
    ['a day after the last when it cannot be told', [r(0, 9950), r(48, 9942)], 72],
    ['when the sheet’s day begins, if only that is missing', [r(-24, 9940), r(26, 9940)], 36],
    ['two days from now while the wine is cold', [r(40, 9940, { wine: 15 })], 88],
  ])('%s', (_, readings, hours, now) => expect(earliestOf(judged(readings, {}, now))).toBe(hours));
});

test('nothing is finished before there is yeast', () =>
  expect(
    fermentationFinished({ readings: [], pitched: undefined, now: PITCHED, finish: FINISH }),
  ).toMatchObject({ also: [{ code: 'no-yeast-yet' }] }));
