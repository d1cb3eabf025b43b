import { describe, expect, test } from 'vitest';
import { answersTold, codesOf, earliestOf, momentAt } from '../../../tests/story/told';
import { fallenBright } from './fallen-bright';

type Said = ReturnType<typeof codesOf>;

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

  test('has not begun to clear before it was left to', () =>
    expect(
      fallenBright({
        judgements: answersTold('clear', [false, true], 1),
        clearingSince: undefined,
        minimumDays: 14,
        now: momentAt(1),
      }),
    ).toEqual({
      open: false,
      because: { code: 'clearing-too-short', day: 0, minimumDays: 14 },
      also: [{ code: 'not-looked-at', days: 1, wanted: 2 }],
    }));
});
