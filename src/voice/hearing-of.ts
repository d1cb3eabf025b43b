import { LONGEST, type Hearing, type Segment } from './ear/decoder';
import { isWithin, LOOSEST, loosenessOf, type Looseness } from './ear/looseness';
import { lengthOf, overlapOf } from './ear/spans';
import { asHeard, type Offer } from './grammar-for';
import type { NumberAsked } from './number-grammar';
import { spokenNumber } from './spoken-number';

/** A phrase on offer as it is written in `text/`, or the number that was asked, in its unit. */
export type Said = string | number;

/** What was said, if anything; `unsure` is to be asked about ("Did you say …?"), never acted on. */
export type Understood = { sure: Said } | { unsure: Said } | undefined;

/** What a phrase or a number must meet: nothing looser than `LOOSEST` is set against decoys at all. Times in seconds. */
export type Demands = Looseness & {
  /** How much better the sounds must fit it than they fit decoys, a tenth of a second. */
  margin: number;
  /** The same, from its first word to its last. */
  inside: number;
  /** The most in which decoys hear words and it hears none: talk around it. */
  leftOver: number;
};
type Weighed = { sure: Demands; unsure: Demands };
/** Speech that stands well out of the noise must meet more. */
export type ByNoise = Record<'quiet' | 'noisy', Weighed>;

/** Decibels. Speech that stands less far out of the noise is weighed as noisy. */
const QUIET = 30;

// Chosen on the voices for tuning, in quiet and in each kind of noise: noise spoils the fit of every phrase, but that
// of decoys less.
export const A_PHRASE: ByNoise = {
  quiet: {
    sure: { margin: 60, inside: 85, leftOver: 0.4, gaps: 0.12, tail: 0.47 },
    unsure: { margin: 35, inside: 50, leftOver: 0.5, gaps: 0.2, tail: 0.6 },
  },
  noisy: {
    sure: { margin: 20, inside: 35, leftOver: 0.7, gaps: 0.25, tail: 0.6 },
    unsure: { margin: 0, inside: 0, leftOver: 0.8, gaps: 0.3, tail: 0.6 },
  },
};
/** A number is read back in any case, and talk is hardly ever taken for one. */
const A_NUMBER: ByNoise = {
  quiet: {
    sure: { margin: 35, inside: 50, leftOver: 0.6, gaps: 0.3, tail: 0.6 },
    unsure: { margin: 20, inside: 20, leftOver: 0.6, ...LOOSEST },
  },
  noisy: {
    sure: { margin: 20, inside: 20, leftOver: 0.8, ...LOOSEST },
    unsure: { margin: 0, inside: 0, leftOver: 0.8, ...LOOSEST },
  },
};

/** Seconds. In the ending of "thirty" the engine likes to find an eight as well, shorter than almost anybody says it. */
const SHORTEST: Readonly<Record<string, number>> = { eight: 0.125, two: 0.1 };

/** Weighs what the engine found: whatever is said, it finds the phrase that fits best. `snr` in dB. */
export function hearingOf(
  hearing: Hearing | undefined,
  offer: Offer,
  snr: number,
  ofAPhrase = A_PHRASE,
): Understood {
  if (!hearing || hearing.seconds > LONGEST) return undefined;
  const said = saidIn(hearing, offer);
  if (said === undefined) return undefined;
  const { sure, unsure } = (typeof said === 'number' ? A_NUMBER : ofAPhrase)[snr < QUIET ? 'noisy' : 'quiet'];
  if (meets(hearing, sure)) return { sure: said };
  return meets(hearing, unsure) ? { unsure: said } : undefined;
}

function saidIn(hearing: Hearing, { phrases, numbers }: Offer): Said | undefined {
  const phrase = phrases.find((each) => asHeard(each) === hearing.words);
  if (phrase !== undefined || !numbers) return phrase;
  const words = wordsSaid(hearing);
  return inFigures(words, numbers) ?? spokenNumber(numbers.kind, words, numbers);
}

/** The words but for those that were over too soon to have been said. */
function wordsSaid({ words, segments }: Hearing): string {
  const isSaid = (segment: Segment) => lengthOf(segment) >= (SHORTEST[segment.word] ?? 0);
  if (segments.every(isSaid)) return words;
  return segments
    .filter(isSaid)
    .map(({ word }) => word)
    .join(' ');
}

/** A browser's own ears write a number in figures. */
function inFigures(words: string, { lowest, highest }: NumberAsked): number | undefined {
  const number = /^\d+([.,]\d+)?$/.test(words) ? Number(words.replace(',', '.')) : Number.NaN;
  return number >= lowest && number <= highest ? number : undefined;
}

function meets(hearing: Hearing, { margin, inside, leftOver, ...loosest }: Demands): boolean {
  if ((hearing.margin ?? -Infinity) < margin || (hearing.inside ?? -Infinity) < inside) return false;
  return isWithin(loosenessOf(hearing), loosest) && leftOverBy(hearing) <= leftOver;
}

/** How long decoys hear words where the phrase hears none: talk before, after or in the middle of it. */
const leftOverBy = ({ segments, against = [] }: Hearing): number =>
  against.reduce((sum, word) => sum + lengthOf(word) - sharedWith(word, segments), 0);

const sharedWith = (word: Segment, segments: readonly Segment[]): number =>
  segments.reduce((sum, segment) => sum + overlapOf(word, segment), 0);
