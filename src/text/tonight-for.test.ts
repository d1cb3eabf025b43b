import { describe, expect, test } from 'vitest';
import { everyProblem } from '../../tests/story/every-problem';
import { FIRST_PREFERENCES } from '../domain/preferences';
import type { Problem } from '../domain/problem';
import { builtInSheets } from '../procedure/kits';
import { CHECKS } from '../procedure/check';
import { asOf, nothingYet } from '../procedure/facts';
import { judge } from '../procedure/judge';
import { GATES } from '../procedure/phase';
import type { Instant } from '../domain/unit';
import { en } from './en';
import { formatsFor } from './formats';
import { tonightFor } from './tonight-for';

const formats = formatsFor({ preferences: FIRST_PREFERENCES, language: 'en', timeZone: 'UTC' });
const advice = (problem: Problem) => tonightFor(en, problem, formats);

const begun = { at: Date.UTC(2031, 3, 3, 15) as Instant, offsetMinutes: 0 };
const nothing = asOf(nothingYet(begun, 18), begun);

describe('what to do tonight', () => {
  test.each([...GATES, ...CHECKS])(
    'is known for every clause that %s fails on before anything is known',
    (question) => {
      const failed = builtInSheets.flatMap((sheet) => {
        const verdict = judge(question, sheet, nothing);
        return verdict.open ? [] : [verdict.because, ...verdict.also];
      });
      expect(failed.filter((problem) => advice(problem) === undefined)).toEqual([]);
    },
  );

  test('is one to four short sentences with no hole in them', () =>
    expect(
      Object.values(everyProblem)
        .map((problem) => advice(problem))
        .filter((said) => said !== undefined)
        .filter(
          (said) =>
            !/^[A-Z].*\.$/s.test(said) ||
            /undefined|NaN|\[object|worse/.test(said) ||
            said.split(/(?<=\.) /).length > 4,
        ),
    ).toEqual([]));

  test.each<[keyof typeof everyProblem, RegExp]>([
    ['not-dry', /No stabiliser/],
    ['wine-too-cold', /warmer.*never stand it on a heat pad, least of all glass/],
    ['cannot-tell-yet', /One more reading tomorrow/],
    ['still-moving', /Do not bottle, and add nothing/],
    ['dryness-not-proven', /Keep every stabiliser .* closed/],
  ])('%s keeps the wine safe', (code, safe) => expect(advice(everyProblem[code])).toMatch(safe));

  test.each<keyof typeof everyProblem>(['gravity-misread', 'already-done', 'not-json', 'storage-full'])(
    'is nothing for %s, which is no clause',
    (code) => expect(advice(everyProblem[code])).toBeUndefined(),
  );
});
