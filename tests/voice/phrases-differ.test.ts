import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import { guide } from '../../src/text/en/guide';
import type { Command } from '../../src/voice/commands';
import { DECOYS } from '../../src/voice/decoys';
import { dictionaryOf, type Dictionary } from '../../src/voice/ear/dictionary';
import { wordsIn } from '../../src/voice/ear/grammar-words';
import { unpack } from '../../src/voice/ear/pack';
import { asHeard, grammarAgainst, grammarFor } from '../../src/voice/grammar-for';
import { RANGES } from './corpus/numbers';
import { everyOffer } from './on-offer';
import { phoneticDistance, sharedTail, syllables, type Sounds } from './phonetic-distance';

/** The least number of sounds between phrases for two things that can be said at one moment. */
const APART = 4;
/** The least share of the longer phrase that must differ. */
const SHARE_APART = 0.5;
/** The most that two of them may have in common at their ends, as a share of the shorter one. */
const TAIL = 0.5;

type Phrase = { command: Command; phrase: string; sounds: Sounds };

const offers = everyOffer();
const together = (one: Command, other: Command): boolean =>
  offers.some((offer) => offer.includes(one) && offer.includes(other));

describe('phrases that are on offer together', () => {
  let dictionary: Dictionary;
  let pairs: { one: Phrase; other: Phrase }[];
  let all: Phrase[];

  beforeAll(async () => {
    dictionary = dictionaryOf(await unpack(new Uint8Array(readFileSync('public/ear/ear.pack'))));
    const sounds = (phrase: string) =>
      asHeard(phrase)
        .split(' ')
        .flatMap((word) => dictionary(word)[0]?.sounds.split(' ') ?? []);
    all = (Object.entries(guide.commands) as [Command, readonly string[]][]).flatMap(([command, phrases]) =>
      phrases.map((phrase) => ({ command, phrase, sounds: sounds(phrase) })),
    );
    pairs = all.flatMap((one, nth) =>
      all
        .slice(nth + 1)
        .filter((other) => other.command !== one.command && together(one.command, other.command))
        .map((other) => ({ one, other })),
    );
  });

  const told = ({ one, other }: { one: Phrase; other: Phrase }) =>
    `${one.phrase} (${one.command}), ${other.phrase} (${other.command})`;

  test('are many: every command is on offer at some moment', () => {
    expect(new Set(offers.flat())).toEqual(new Set(Object.keys(guide.commands)));
    expect(pairs.length).toBeGreaterThan(300);
  });

  test(`are ${String(APART)} sounds apart, and differ in half of the longer one`, () =>
    expect(
      pairs
        .filter(({ one, other }) => {
          const distance = phoneticDistance(one.sounds, other.sounds);
          const longer = Math.max(one.sounds.length, other.sounds.length);
          return distance < APART || distance < longer * SHARE_APART;
        })
        .map((pair) => `${told(pair)}: ${String(phoneticDistance(pair.one.sounds, pair.other.sounds))}`),
    ).toEqual([]));

  test('do not end alike: the end is what noise leaves', () =>
    expect(
      pairs
        .filter(
          ({ one, other }) =>
            sharedTail(one.sounds, other.sounds) > TAIL * Math.min(one.sounds.length, other.sounds.length),
        )
        .map(told),
    ).toEqual([]));

  test('have three syllables or more, and are made of words that the engine can say', () => {
    expect(all.filter(({ sounds }) => syllables(sounds) < 3).map(({ phrase }) => phrase)).toEqual([]);
    const words = all.flatMap(({ phrase }) => asHeard(phrase).split(' '));
    expect(words.filter((word) => dictionary(word).length === 0)).toEqual([]);
  });

  test('stand beside numbers and decoys that the engine can say', () => {
    const numbers = Object.values(RANGES).map((asked) => grammarFor({ phrases: [], numbers: asked }));
    const words = [...numbers, grammarAgainst({ phrases: [] }, [], DECOYS)].flatMap(wordsIn);
    expect(words.length).toBeGreaterThan(300);
    expect(words.filter((word) => dictionary(word).length === 0)).toEqual([]);
  });
});
