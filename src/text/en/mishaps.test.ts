import { describe, expect, test } from 'vitest';
import { MISHAP_IDS, MISHAPS, type Mishap } from '../../procedure/mishap';
import { en } from '../en';
import { cautions } from './cautions';

const { mishaps } = en.whatHappened;

describe.each(MISHAP_IDS)('%s', (mishap) => {
  const words = mishaps[mishap];
  const sentences = [
    words.tell,
    words.lost,
    words.reversible,
    ...(words.cautions ?? []),
    ...words.now,
    words.again,
    words.look,
  ];

  test('says in whole sentences how to tell, what is lost, what is reversible, what to do, and when to look again', () =>
    expect([...sentences, words.entry].filter((sentence) => !/^[A-Z0-9].*[.:?]$/s.test(sentence))).toEqual(
      [],
    ));

  test('has two to six things to do', () => {
    expect(words.now.length).toBeGreaterThanOrEqual(2);
    expect(words.now.length).toBeLessThanOrEqual(6);
  });

  test('asks on its day what can be answered with “all is well”, and speaks of no later day', () => {
    expect(words.look).toMatch(/\?$/);
    expect(words.look).not.toMatch(/tomorrow|in an hour|half a day|in (a|three|two)|every day/i);
  });

  test('says when to look again as the procedure does', () => {
    const spans: Record<number, RegExp> = {
      1: /hour/i,
      12: /half a day/i,
      24: /tomorrow|on your return|every day/i,
      48: /two days/i,
      72: /three days|should be clearing/i,
      168: /in a week/i,
    };
    expect(words.again).toMatch(spans[MISHAPS[mishap].lookAgainHours] ?? /never/);
  });
});

test('no two are said alike', () => {
  const spoken = MISHAP_IDS.map((mishap) => mishaps[mishap].spoken.toLowerCase());
  expect(new Set(spoken).size).toBe(spoken.length);
  expect(spoken.filter((phrase) => phrase.split(' ').length < 3)).toEqual([]);
});

test.each<[Mishap, RegExp]>([
  ['hydrometer in the wine', /glass/i],
  ['hydrometer broken', /splinters/i],
  ['bottle broke', /glass/i],
  ['gas in bottles', /burst/i],
  ['closures rising', /burst/i],
  ['poured back', /burst/i],
  ['foamed over', /pressure/i],
  ['stuck bung', /pressure/i],
  ['sweetening too early', new RegExp(cautions.carbonDioxide.slice(0, 20))],
  ['stabiliser too early', /sulphite/i],
  ['one of a pair', /sulphite/i],
  ['sachet lost', /sulphite/i],
  ['crystals', /glass|broke/i],
])('%s puts the caution first', (mishap, caution) =>
  expect(mishaps[mishap].cautions?.join(' ')).toMatch(caution),
);

test('where a dose could be doubled, it is said that it is not', () =>
  expect(
    (['stabiliser too early', 'wrapper too many', 'poured back', 'gas in bottles'] as const).filter(
      (mishap) =>
        !/no more stabiliser|never gives? sorbate twice|never given twice|not given twice/i.test(
          JSON.stringify(mishaps[mishap]),
        ),
    ),
  ).toEqual([]));
