import { describe, expect, test } from 'vitest';
import { codesOf, earliestOf, momentAt, readingTold, type Told } from '../../../tests/story/told';
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
    ['not at 1.010', [{ gravity: 10100, hours: 0 }], 'not-dry'],
    ['not on one dry reading', [{ gravity: 9940, hours: 0 }], 'too-few-readings'],
    [
      'not on two of them 47 hours apart',
      [
        { gravity: 9940, hours: 1 },
        { gravity: 9940, hours: 48 },
      ],
      'too-few-readings',
    ],
    [
      'on two equal dry readings 49 hours apart',
      [
        { gravity: 9940, hours: 0 },
        { gravity: 9940, hours: 49 },
      ],
      'open',
    ],
    [
      'at exactly 48 hours',
      [
        { gravity: 9940, hours: 0 },
        { gravity: 9940, hours: 48 },
      ],
      'open',
    ],
    [
      'at exactly the limit',
      [
        { gravity: 9960, hours: 0 },
        { gravity: 9960, hours: 48 },
      ],
      'open',
    ],
    [
      'not a ten-thousandth above it',
      [
        { gravity: 9960, hours: 0 },
        { gravity: 9961, hours: 48 },
      ],
      'not-dry',
    ],
    [
      'not when the older of the two was above it',
      [
        { gravity: 9965, hours: 0 },
        { gravity: 9960, hours: 48 },
      ],
      'was-not-dry',
    ],
    [
      'on a fall of 0.0004',
      [
        { gravity: 9944, hours: 0 },
        { gravity: 9940, hours: 48 },
      ],
      'open',
    ],
    [
      'not yet told by a fall of 0.0005',
      [
        { gravity: 9945, hours: 0 },
        { gravity: 9940, hours: 48 },
      ],
      'cannot-tell-yet',
    ],
    [
      'not yet told by a fall of 0.0012',
      [
        { gravity: 9952, hours: 0 },
        { gravity: 9940, hours: 48 },
      ],
      'cannot-tell-yet',
    ],
    [
      'not on a fall of 0.0013',
      [
        { gravity: 9953, hours: 0 },
        { gravity: 9940, hours: 48 },
      ],
      'still-falling',
    ],
    [
      'not on a rise of 0.0013, which asks for a re-read',
      [
        { gravity: 9940, hours: 0 },
        { gravity: 9953, hours: 48 },
      ],
      'reading-rose',
    ],
    [
      'on a rise that the scale cannot show',
      [
        { gravity: 9940, hours: 0 },
        { gravity: 9952, hours: 48 },
      ],
      'open',
    ],
    [
      'not when a third between them strays',
      [
        { gravity: 9940, hours: 0 },
        { gravity: 9958, hours: 24 },
        { gravity: 9940, hours: 48 },
      ],
      'still-falling',
    ],
    [
      'not in wine at 15 °C',
      [
        { gravity: 9940, hours: 0, wine: 15 },
        { gravity: 9940, hours: 48, wine: 15 },
      ],
      'wine-too-cold',
    ],
    [
      'not when only the last was in warm wine',
      [
        { gravity: 9940, hours: 0, wine: 15 },
        { gravity: 9940, hours: 48 },
      ],
      'too-few-readings',
    ],
    [
      'not with gas in the sample',
      [
        { gravity: 9940, hours: 0 },
        { gravity: 9940, hours: 48, degassed: false },
      ],
      'sample-gassy',
    ],
    [
      'not by a reading that is told afterwards',
      [
        { gravity: 9940, hours: 0 },
        { gravity: 9940, hours: 48, backDated: true },
      ],
      'last-reading-back-dated',
    ],
    [
      'by an earlier one that is',
      [
        { gravity: 9940, hours: 0, backDated: true },
        { gravity: 9940, hours: 48 },
      ],
      'open',
    ],
    [
      'not by a struck reading',
      [
        { gravity: 9940, hours: 0, struck: true },
        { gravity: 9940, hours: 48 },
      ],
      'too-few-readings',
    ],
    [
      'in spite of a struck one that was high',
      [
        { gravity: 9940, hours: 0 },
        { gravity: 10100, hours: 24, struck: true },
        { gravity: 9940, hours: 48 },
      ],
      'open',
    ],
    [
      'in spite of older, higher ones',
      [
        { gravity: 10100, hours: -100 },
        { gravity: 9940, hours: 0 },
        { gravity: 9940, hours: 48 },
      ],
      'open',
    ],
    [
      'in spite of a cold one after two good ones',
      [
        { gravity: 9940, hours: 0 },
        { gravity: 9940, hours: 48 },
        { gravity: 9950, hours: 50, wine: 15 },
      ],
      'open',
    ],
    [
      'not before the sheet’s day',
      [
        { gravity: 9940, hours: -24 },
        { gravity: 9940, hours: 35 },
      ],
      'too-soon',
    ],
    [
      'from the first hour of the sheet’s day',
      [
        { gravity: 9940, hours: -24 },
        { gravity: 9940, hours: 36 },
      ],
      'open',
    ],
    [
      'not with two where the sheet asks three',
      [
        { gravity: 9940, hours: 0 },
        { gravity: 9940, hours: 48 },
      ],
      'too-few-readings',
      { readings: 3 },
    ],
    [
      'with three',
      [
        { gravity: 9940, hours: 0 },
        { gravity: 9940, hours: 24 },
        { gravity: 9940, hours: 48 },
      ],
      'open',
      { readings: 3 },
    ],
    [
      'not at 48 hours where the sheet asks 72',
      [
        { gravity: 9940, hours: 0 },
        { gravity: 9940, hours: 48 },
      ],
      'too-few-readings',
      { hoursApart: 72 },
    ],
  ];
  test.each(told)('%s', (_, readings, said, finish) => expect(first(judged(readings, finish))).toBe(said));

  test('a scale of 0.002 cannot tell a fall of 0.0015, nor of 0.0019, and sees one of 0.0020', () =>
    expect(
      [15, 19, 20].map((fall) =>
        first(
          judged([
            { gravity: 9960, hours: 0, division: 20 },
            { gravity: 9960 - fall, hours: 48, division: 20 },
          ]),
        ),
      ),
    ).toEqual(['cannot-tell-yet', 'cannot-tell-yet', 'still-falling']));

  test('names every clause that fails, the most telling first', () => {
    expect(codesOf(judged([{ gravity: 10100, hours: -40, wine: 15 }]))).toEqual([
      'wine-too-cold',
      'too-few-readings',
      'too-soon',
    ]);
  });
});

describe('"cannot tell yet" asks for one more reading', () => {
  const falling: Told[] = [
    { gravity: 9950, hours: 0 },
    { gravity: 9942, hours: 48 },
  ];
  test.each([
    ['opens when it is no lower a day later', { gravity: 9942, hours: 72 }, 'open'],
    ['opens when it is lower by 0.0004', { gravity: 9938, hours: 72 }, 'open'],
    ['stays shut when it is lower by 0.0005', { gravity: 9937, hours: 72 }, 'still-falling'],
    ['stays shut when it comes 23 hours later', { gravity: 9942, hours: 71 }, 'cannot-tell-yet'],
  ])('%s', (_, more, said) => expect(first(judged([...falling, more]))).toBe(said));

  test('and for another after that when it went on falling by 0.0005', () =>
    expect(
      first(
        judged([
          ...[9947, 9942].map((gravity, index) => ({ gravity, hours: index * 48 })),
          { gravity: 9937, hours: 72 },
        ]),
      ),
    ).toBe('cannot-tell-yet'));
});

describe('the earliest time it could pass, in hours after noon of day 10', () => {
  test.each<[story: string, readings: Told[], hours: number]>([
    ['two days from now while it is sweet', [{ gravity: 10100, hours: 40 }], 88],
    ['two days after the one dry reading', [{ gravity: 9940, hours: 0 }], 48],
    [
      'two days after the first dry one, not after the sweet one before',
      [
        { gravity: 10100, hours: 0 },
        { gravity: 9940, hours: 10 },
      ],
      58,
    ],
    [
      'a day after the last when it cannot be told',
      [
        { gravity: 9950, hours: 0 },
        { gravity: 9942, hours: 48 },
      ],
      72,
    ],
    [
      'when the sheet’s day begins, if only that is missing',
      [
        { gravity: 9940, hours: -24 },
        { gravity: 9940, hours: 26 },
      ],
      36,
    ],
    ['two days from now while the wine is cold', [{ gravity: 9940, hours: 40, wine: 15 }], 88],
  ])('%s', (_, readings, hours) => expect(earliestOf(judged(readings))).toBe(hours));
});

test('nothing is finished before there is yeast', () =>
  expect(
    fermentationFinished({ readings: [], pitched: undefined, now: PITCHED, finish: FINISH }),
  ).toMatchObject({ also: [{ code: 'no-yeast-yet' }] }));
