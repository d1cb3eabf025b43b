import { describe, expect, test } from 'vitest';
import type { Pace } from '../../domain/gates/ferment-pace';
import type { Gravity } from '../../domain/gravity';
import { FIRST_PREFERENCES } from '../../domain/preferences';
import type { Celsius } from '../../domain/unit';
import { RUNGS } from '../../procedure/facts';
import { formatsFor, type Formats } from '../formats';
import { pace, rungs } from './pace';

const formats = formatsFor({ preferences: FIRST_PREFERENCES, language: 'en', timeZone: 'UTC' });
const gravity = (tenThousandths: number) => tenThousandths as Gravity;
const told = (given: Pace) => {
  const words = pace[given.code] as (of: Pace, formats: Formats) => { means: string; now: string };
  return words(given, formats);
};

describe('how a ferment goes', () => {
  test.each<[Pace, RegExp, RegExp]>([
    [{ code: 'unread' }, /Nothing has been read/, /Take a reading/],
    [{ code: 'dry' }, /at the limit or lower/, /take the readings/],
    [{ code: 'going', perDay: gravity(83) }, /about 0\.0083 a day/, /Leave it warm/],
    [{ code: 'going', perDay: gravity(0) }, /one reading so far/, /Leave it warm/],
    [{ code: 'slow', perDay: gravity(12) }, /about 0\.0012 a day/, /No stabiliser/],
    [{ code: 'slow', perDay: gravity(0) }, /the same/, /No stabiliser/],
    [
      { code: 'stuck', hours: 75.4, fall: gravity(4) },
      /In 3 days and 3 hours the gravity fell by no more than 0\.0004/,
      /No stabiliser/,
    ],
    [{ code: 'stuck', hours: 72, fall: gravity(0) }, /In 3 days the gravity did not fall/, /gentlest first/],
    [
      { code: 'cold', wine: 14 as Celsius, atLeast: 18 as Celsius },
      /14 °C.* 18 °C.* not stuck/,
      /never stand it on a heat pad/,
    ],
    [{ code: 'misread', by: gravity(30) }, /0\.003 higher.* Fermenting never does that/, /Strike out/],
  ])('%o', (given, means, now) =>
    expect(told(given)).toEqual({
      means: expect.stringMatching(means) as string,
      now: expect.stringMatching(now) as string,
    }),
  );
});

describe('help for a stuck ferment', () => {
  test('goes from the gentlest up, and every step has its time to look again', () =>
    expect(RUNGS.map((rung) => [rungs[rung].show, /after 72 hours/.test(rungs[rung].again)])).toEqual([
      ['Check the reading and its temperature.', true],
      ['Warm the wine by 2 to 3 °C (4 to 5 °F).', true],
      ['Stir up the yeast, gently.', true],
      ['Add a fresh starter that is already at work.', true],
    ]));

  test('never is a stabiliser', () =>
    expect(RUNGS.filter((rung) => /stabilis|sorb|sulph/i.test(Object.values(rungs[rung]).join(' ')))).toEqual(
      [],
    ));
});
