import { expect, test } from 'vitest';
import { momentAt, readingTold, type Told } from '../../../tests/story/told';
import type { Gravity } from '../gravity';
import type { Celsius } from '../unit';
import { fermentPace, type Pace } from './ferment-pace';

const finish = {
  limit: 9960 as Gravity,
  readings: 2,
  hoursApart: 48,
  wineAtLeast: 18 as Celsius,
  minimumDays: 12,
};
const paceOf = (told: Told[]): Pace =>
  fermentPace(told.map(readingTold), finish, momentAt(Math.max(0, ...told.map(({ hours }) => hours))));

test.each<[story: string, readings: Told[], pace: Pace]>([
  ['nobody has read it', [], { code: 'unread' }],
  ['it was read once', [{ gravity: 10100, hours: 0 }], { code: 'going', perDay: 0 as Gravity }],
  ['it is at the limit', [{ gravity: 9960, hours: 0 }], { code: 'dry' }],
  [
    'it falls by 0.010 a day',
    [
      { gravity: 10400, hours: 0 },
      { gravity: 10200, hours: 48 },
    ],
    { code: 'going', perDay: 100 as Gravity },
  ],
  [
    'it falls by 0.0015 a day',
    [
      { gravity: 10045, hours: 0 },
      { gravity: 10030, hours: 24 },
    ],
    { code: 'slow', perDay: 15 as Gravity },
  ],
  [
    'it fell by 0.0009 in three warm days',
    [
      { gravity: 10045, hours: 0 },
      { gravity: 10036, hours: 72 },
    ],
    { code: 'stuck', hours: 72, fall: 9 as Gravity },
  ],
  [
    'it fell by 0.0010 in three warm days',
    [
      { gravity: 10046, hours: 0 },
      { gravity: 10036, hours: 72 },
    ],
    { code: 'slow', perDay: 3 as Gravity },
  ],
  [
    'it was not three days yet',
    [
      { gravity: 10045, hours: 0 },
      { gravity: 10045, hours: 71 },
    ],
    { code: 'slow', perDay: 0 as Gravity },
  ],
  [
    'it stood still, but one of the days was cold',
    [
      { gravity: 10045, hours: 0, wine: 15 },
      { gravity: 10045, hours: 72 },
    ],
    { code: 'slow', perDay: 0 as Gravity },
  ],
  [
    'it stands still in the cold',
    [
      { gravity: 10045, hours: 0, wine: 15 },
      { gravity: 10045, hours: 72, wine: 16 },
    ],
    { code: 'cold', wine: 16 as Celsius, atLeast: 18 as Celsius },
  ],
  [
    'it rose',
    [
      { gravity: 10030, hours: 0 },
      { gravity: 10050, hours: 24 },
    ],
    { code: 'misread', by: 20 as Gravity },
  ],
  [
    'it falls by 0.0020 a day',
    [
      { gravity: 10050, hours: 0 },
      { gravity: 10030, hours: 24 },
    ],
    { code: 'going', perDay: 20 as Gravity },
  ],
  [
    'it falls by 0.0030 a day',
    [
      { gravity: 10060, hours: 0 },
      { gravity: 10030, hours: 24 },
    ],
    { code: 'going', perDay: 30 as Gravity },
  ],
  [
    'it rose by as much as the scale cannot show',
    [
      { gravity: 10030, hours: 0 },
      { gravity: 10042, hours: 24 },
    ],
    { code: 'slow', perDay: -12 as Gravity },
  ],
  [
    'it stood still for three days in wine that was only just warm enough',
    [
      { gravity: 10045, hours: 0, wine: 18 },
      { gravity: 10045, hours: 72, wine: 18 },
    ],
    { code: 'stuck', hours: 72, fall: 0 as Gravity },
  ],
])('%s', (_, readings, pace) => expect(paceOf(readings)).toEqual(pace));
