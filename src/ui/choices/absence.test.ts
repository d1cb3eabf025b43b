import { describe, expect, test } from 'vitest';
import type { Moment } from '../../domain/calendar';
import type { Instant } from '../../domain/unit';
import { absence, dayIn } from './absence';

/** Half past eleven in the evening of 3 May on a clock two hours ahead. */
const now: Moment = { at: Date.UTC(2031, 4, 3, 21, 30) as Instant, offsetMinutes: 120 };
const utc = (...at: [number, number, number, number]) => Date.UTC(...at);

describe('a time away', () => {
  test('goes from the morning of one day to the morning of the other', () =>
    expect(absence('2031-05-06', '2031-05-10', now)).toEqual({
      from: utc(2031, 4, 5, 22),
      until: utc(2031, 4, 9, 22),
    }));

  test('that begins today begins now', () =>
    expect(absence('2031-05-03', '2031-05-04', now)).toEqual({ from: now.at, until: utc(2031, 4, 3, 22) }));

  test.each([
    ['', '2031-05-10'],
    ['2031-05-06', ''],
    ['soon', 'later'],
  ])('is none from “%s” to “%s”', (leaving, back) => expect(absence(leaving, back, now)).toBeUndefined());
});

test('a day is the wall clock’s', () => expect(dayIn(now)).toBe('2031-05-03'));
