import { describe, expect, test } from 'vitest';
import { daysBetween, nextFreeHour, onDay, type Moment } from './calendar';
import type { Instant } from './unit';

const moment = (utc: string, offsetMinutes: number): Moment => ({
  at: Date.parse(utc) as Instant,
  offsetMinutes,
});
const utc = (instant: number): string => new Date(instant).toISOString();

describe('days are the maker’s calendar days', () => {
  test.each([
    [
      'an hour before midnight to an hour after is one day',
      moment('2031-05-03T21:00Z', 120),
      moment('2031-05-03T23:00Z', 120),
      1,
    ],
    ['the whole of one date is day 0', moment('2031-05-02T22:00Z', 120), moment('2031-05-03T21:59Z', 120), 0],
    [
      '23 hours over a change to summer time are one day',
      moment('2031-03-29T17:00Z', 60),
      moment('2031-03-30T16:00Z', 120),
      1,
    ],
    [
      '25 hours over the change back are one day',
      moment('2031-10-25T16:00Z', 120),
      moment('2031-10-26T17:00Z', 60),
      1,
    ],
    ['west of Greenwich too', moment('2031-05-04T03:00Z', -300), moment('2031-05-04T06:00Z', -300), 1],
  ])('%s', (_, from, to, days) => expect(daysBetween(from, to)).toBe(days));
});

test('an hour of the n-th day, by the wall clock it was asked on', () =>
  expect(utc(onDay(moment('2031-05-03T15:00Z', 120), 12, 18))).toBe('2031-05-15T16:00:00.000Z'));

test.each([
  ['today, when it is still to come', '2031-05-03T15:00Z', '2031-05-03T16:00:00.000Z'],
  ['now, on the hour', '2031-05-03T16:00Z', '2031-05-03T16:00:00.000Z'],
  ['tomorrow, when it has passed', '2031-05-03T16:01Z', '2031-05-04T16:00:00.000Z'],
])('the next free hour is %s', (_, from, next) =>
  expect(utc(nextFreeHour(moment(from, 120), 18))).toBe(next),
);
