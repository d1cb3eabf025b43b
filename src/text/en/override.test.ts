import { describe, expect, test } from 'vitest';
import { FIRST_PREFERENCES } from '../../domain/preferences';
import type { Gravity } from '../../domain/gravity';
import { CONTENTS } from '../../procedure/contents';
import { YIELDS } from '../../procedure/yielding';
import { formatsFor } from '../formats';
import { override } from './override';

const formats = formatsFor({ preferences: FIRST_PREFERENCES, language: 'en', timeZone: 'UTC' });

describe('going on in spite of a clause', () => {
  test('has words for every clause that yields, and for no other', () =>
    expect(Object.keys(override.clauses).toSorted()).toEqual(Object.values(YIELDS).flat().toSorted()));

  test.each(Object.entries(override.clauses))('%s: what it means, what is asked, what stays', (_, words) =>
    expect([words.means, words.reason, words.afterwards('my own words')]).toEqual([
      expect.stringMatching(/^[A-Z].*\.$/),
      expect.stringMatching(/^Why .*\?$/),
      expect.stringMatching(/^It [^“]+\. The reason given: “my own words”\.$/),
    ]),
  );
});

describe('leaving a sachet out', () => {
  test('is told for all that a sachet can hold, but for yeast', () =>
    expect(Object.keys(override.leaveOut.means).toSorted()).toEqual(
      CONTENTS.filter((contents) => contents !== 'yeast').toSorted(),
    ));

  test.each<['sorbate' | 'sulphite', RegExp]>([
    ['sorbate', /nothing sweet goes in.* 0\.996 or lower/],
    ['sulphite', /the sorbate stays out too.* nothing sweet goes in.* 0\.996 or lower/],
  ])('%s: what follows is said, with the limit of dryness', (contents, says) =>
    expect(override.leaveOut.means[contents](formats, 9960 as Gravity)).toMatch(says),
  );
});

describe('a sugar test', () => {
  test('counts as dry in grams, and says what it does not settle', () =>
    expect(override.sugarTest.counts(1.5, formats)).toBe(
      '1.5 grams of sugar in a litre: that counts as dry, whatever the limit says. The readings must still agree, and the wine must still be warm.',
    ));

  test('that finds more names what would count', () =>
    expect(override.sugarTest.doesNotCount(6, formats)).toMatch(/^6 grams .* more than the 2 grams /));
});
