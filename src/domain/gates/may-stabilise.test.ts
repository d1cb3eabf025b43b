import { expect, test } from 'vitest';
import { codesOf, momentAt, readingTold, type Told } from '../../../tests/story/told';
import type { Gravity } from '../gravity';
import type { Celsius } from '../unit';
import { mayStabilise, type AddedSachet } from './may-stabilise';

const DRY: Told[] = [
  { gravity: 9940, hours: 0 },
  { gravity: 9940, hours: 48 },
];
const fermented = (readings: Told[], now: number) => ({
  readings: readings.map(readingTold),
  pitched: momentAt(-288),
  now: momentAt(now),
  finish: {
    limit: 9960 as Gravity,
    readings: 2,
    hoursApart: 48,
    wineAtLeast: 18 as Celsius,
    minimumDays: 12,
  },
});
const passing = { ...momentAt(49), rules: 1, readings: [1, 2] };

test.each<
  [story: string, readings: Told[], now: number, added: AddedSachet[], said: ReturnType<typeof codesOf>]
>([
  ['right after the gate', DRY, 49, [], 'open'],
  ['72 hours after it', DRY, 49 + 72, [], 'open'],
  ['not an hour later than that', DRY, 49 + 73, [], ['dryness-stale']],
  ['with one fresh reading that agrees', [...DRY, { gravity: 9940, hours: 120 }], 122, [], 'open'],
  [
    'not with a fresh reading that does not',
    [...DRY, { gravity: 9925, hours: 120 }],
    122,
    [],
    ['still-falling'],
  ],
  [
    'not with a fresh reading that was told afterwards',
    [...DRY, { gravity: 9940, hours: 120, backDated: true }],
    122,
    [],
    ['last-reading-back-dated'],
  ],
  [
    'not with a fresh reading that does not count: cold wine',
    [...DRY, { gravity: 9940, hours: 120, wine: 14 }],
    122,
    [],
    ['dryness-stale'],
  ],
  [
    'not with a fresh reading that does not count: gas in the sample',
    [...DRY, { gravity: 9940, hours: 120, degassed: false }],
    122,
    [],
    ['dryness-stale'],
  ],
  [
    'not when that fresh one is three days old as well',
    [...DRY, { gravity: 9940, hours: 120 }],
    193,
    [],
    ['dryness-stale'],
  ],
  [
    'not once one of its readings was struck',
    [
      { gravity: 9940, hours: 0, struck: true },
      { gravity: 9940, hours: 48 },
    ],
    50,
    [],
    ['too-few-readings'],
  ],
  ['not once something else went in', DRY, 50, [{ sachet: 'sweetening', at: 0 }], ['added-since']],
])('a stabiliser may go in: %s', (_, readings, now, addedSince, said) =>
  expect(codesOf(mayStabilise({ fermented: fermented(readings, now), passing, addedSince }))).toEqual(said),
);

test('not by good readings alone: the gate itself must have been passed', () =>
  expect(
    codesOf(mayStabilise({ fermented: fermented(DRY, 49), passing: undefined, addedSince: [] })),
  ).toEqual(['dryness-not-proven']));
