import { describe, expect, test } from 'vitest';
import { answersTold, codesOf, momentAt, r, readingTold, type Told } from '../../../tests/story/told';
import { wineStill } from './wine-still';

type Said = ReturnType<typeof codesOf>;

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
  const base: Told = r(0, 9945);
  test.each<[story: string, readings: Told[], gas: boolean[], said: Said]>([
    ['unchanged a week later, and no gas', [base, r(week, 9940)], [false, false], 'open'],
    ['not without a baseline', [], [], ['no-baseline']],
    [
      'not when the baseline was struck',
      [{ ...base, struck: true }, r(week, 9945)],
      [false, false],
      ['no-baseline'],
    ],
    ['not an hour short of a week', [base, r(week - 1, 9945)], [false, false], ['no-reading-since-baseline']],
    ['not when it fell by 0.0013', [base, r(week, 9932)], [false, false], ['still-moving']],
    [
      'not even within the week',
      [base, r(30, 9930)],
      [],
      ['still-moving', 'no-reading-since-baseline', 'gas-not-tested'],
    ],
    [
      'not by what else was read at the moment of the baseline: that is nothing since',
      [base, r(0, 9920)],
      [],
      ['no-reading-since-baseline', 'gas-not-tested'],
    ],
    ['on a fall that the scale cannot show', [base, r(week, 9933)], [false, false], 'open'],
    ['on a rise that the scale cannot show', [base, r(week, 9957)], [false, false], 'open'],
    ['not on a rise: read again', [base, r(week, 9958)], [false, false], ['reading-rose']],
    [
      'not by a reading told afterwards',
      [base, r(week, 9945, { backDated: true })],
      [false, false],
      ['no-reading-since-baseline'],
    ],
    ['not with gas in it', [base, r(week, 9945)], [false, true], ['gassy']],
  ])('%s', (_, readings, gas, said) => expect(codesOf(rested(readings, gas))).toEqual(said));

  test('says how many days of the week have gone by', () =>
    expect(rested([base], [], 6 * 24 + 5)).toMatchObject({
      because: { code: 'no-reading-since-baseline', days: 6, wanted: 7 },
    }));
});
