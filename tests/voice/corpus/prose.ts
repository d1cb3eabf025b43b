import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { randomFrom } from '../../../src/domain/random-from';

const FORTUNES = '/usr/share/games/fortunes';
const DICTIONARY = '/usr/share/wordnet';
const SPEAKABLE = /^[A-Za-z][A-Za-z ,.'?!;:-]+$/;
const WORDS_A_SECOND = 2.6;

/** Runs of whole sentences in plain letters: what a speaker would otherwise spell out or stumble over is left out. */
function sentences(text: string): string[] {
  return text
    .replaceAll(/\s+/g, ' ')
    .split(/(?<=[.?!])\s+/)
    .map((sentence) => sentence.trim())
    .filter((sentence) => SPEAKABLE.test(sentence) && /[.?!]$/.test(sentence))
    .filter((sentence) => {
      const words = sentence.split(' ');
      return words.length >= 4 && words.length <= 28 && words.every((word) => word.length <= 14);
    });
}

const fortunes = (): string[] =>
  readdirSync(FORTUNES)
    .filter((name) => !name.includes('.') && name !== 'ascii-art')
    .sort()
    .flatMap((name) => readFileSync(join(FORTUNES, name), 'utf8').split(/^%$/m))
    .flatMap((fortune) => sentences(fortune.replaceAll(/^\s*-- .*$/gm, '')));

/** The sentences that a dictionary gives to show how a word is used. */
const examples = (): string[] =>
  ['noun', 'verb', 'adj', 'adv']
    .flatMap((part) => readFileSync(join(DICTIONARY, `data.${part}`), 'utf8').split('\n'))
    .flatMap((line) => [...line.matchAll(/"([^"]+)"/g)].map(([, example = '']) => `${example}.`))
    .flatMap(sentences);

function shuffled<T>(all: readonly T[], random: () => number): T[] {
  const left = [...all];
  for (let at = left.length - 1; at > 0; at--) {
    const other = Math.floor(random() * (at + 1));
    [left[at], left[other]] = [left[other] as T, left[at] as T];
  }
  return left;
}

/** Talk of all sorts, in paragraphs of four sentences: none is ever given out twice. */
export function paragraphs(seed: number): () => string {
  const random = randomFrom(seed);
  const told = shuffled([...new Set(fortunes())], random);
  const shown = shuffled([...new Set(examples())], random);
  return () => {
    const next = [told.pop(), shown.pop(), told.pop(), shown.pop()];
    if (next.includes(undefined)) throw new Error('There are not enough sentences for so much prose.');
    return next.join(' ');
  };
}

export const secondsOf = (text: string): number => text.split(' ').length / WORDS_A_SECOND;
