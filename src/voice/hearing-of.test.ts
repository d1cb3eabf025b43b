import { describe, expect, test } from 'vitest';
import { LONGEST, type Hearing, type Segment } from './ear/decoder';
import type { Offer } from './grammar-for';
import { hearingOf } from './hearing-of';

const offer = { phrases: ['I have finished', 'one step back'] };
/** In a quiet room, unless it is told how far the speech stands out of the noise. */
const heard = (hearing: Hearing | undefined, on: Offer, snr = 50) => hearingOf(hearing, on, snr);
const word = (said: string, from: number, to: number): Segment => ({ word: said, from, to, score: -500 });
const finished = [word('i', 0.2, 0.3), word('have', 0.3, 0.5), word('finished', 0.5, 1)];

/** Heard well: the decoys fit far worse, and find words in the same places. */
const well: Hearing = {
  words: 'i have finished',
  segments: finished,
  score: -3000,
  margin: 160,
  inside: 180,
  against: [word('eye', 0.2, 0.5), word('fun', 0.5, 1)],
  seconds: 1.2,
};

describe('what is heard', () => {
  test('is sure where it fits far better than decoys, and is given as it is written', () =>
    expect(heard(well, offer)).toEqual({ sure: 'I have finished' }));

  test('is asked about where it fits only somewhat better', () =>
    expect(heard({ ...well, margin: 45 }, offer)).toEqual({ unsure: 'I have finished' }));

  test('is asked about where its own words fit only somewhat better', () =>
    expect(heard({ ...well, inside: 60 }, offer)).toEqual({ unsure: 'I have finished' }));

  test('is nothing where one of its words is another', () =>
    expect(heard({ ...well, inside: 20 }, offer)).toBeUndefined());

  test('is nothing where decoys fit as well', () =>
    expect(heard({ ...well, margin: 5 }, offer)).toBeUndefined());

  test('is sure with less where it is noisy: the noise fits no phrase', () => {
    const noisy = { ...well, margin: 30, inside: 45 };
    expect(heard(noisy, offer, 15)).toEqual({ sure: 'I have finished' });
    expect(heard(noisy, offer, 50)).toBeUndefined();
    expect(heard({ ...noisy, margin: -10 }, offer, 15)).toBeUndefined();
  });

  test('is nothing where it was set against nothing', () => {
    const { margin: _, ...unmeasured } = well;
    expect(heard(unmeasured, offer)).toBeUndefined();
  });

  test.each([
    ['before', word('well', -0.8, -0.1)],
    ['after', word('with', 1, 1.9)],
  ])('is nothing where more was said %s it', (_, more) =>
    expect(heard({ ...well, against: [...(well.against ?? []), more] }, offer)).toBeUndefined(),
  );

  test('is nothing where its words stand apart', () => {
    const parted = [word('i', 0.2, 0.3), word('have', 0.3, 0.4), word('finished', 0.7, 1)];
    expect(heard({ ...well, segments: parted }, offer)).toBeUndefined();
  });

  test('is nothing where much comes after its last word', () =>
    expect(heard({ ...well, seconds: 1.7 }, offer)).toBeUndefined());

  test('is nothing where somebody talks on without a pause', () =>
    expect(heard({ ...well, seconds: LONGEST + 0.1 }, offer)).toBeUndefined());

  test('is nothing where it is not on offer', () => {
    expect(heard({ ...well, words: 'say that again' }, offer)).toBeUndefined();
    expect(heard(undefined, offer)).toBeUndefined();
  });

  test('is a number without what was over too soon to have been said', () => {
    const numbers = { kind: 'temperature', lowest: 0, highest: 40 } as const;
    const thirty = (eight: number): Hearing => ({
      ...well,
      words: 'thirty eight',
      segments: [word('thirty', 0.2, 0.7), word('eight', 0.7, 0.7 + eight)],
    });
    expect(heard(thirty(0.1), { ...offer, numbers })).toEqual({ sure: 30 });
    expect(heard(thirty(0.3), { ...offer, numbers })).toEqual({ sure: 38 });
  });

  test('is a number where one is asked, in its unit and only within its range', () => {
    const numbers = { kind: 'gravity', lowest: 0.985, highest: 1.13 } as const;
    const ten = { ...well, words: 'ten fifty four' };
    expect(heard(ten, { ...offer, numbers })).toEqual({ sure: 1.054 });
    expect(heard(ten, { ...offer, numbers: { ...numbers, highest: 1.02 } })).toBeUndefined();
    expect(heard(ten, offer)).toBeUndefined();
  });
});
