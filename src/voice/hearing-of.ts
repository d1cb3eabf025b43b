import type { Hearing, Segment } from './ear/decoder';
import { asHeard, type Offer } from './grammar-for';
import { spokenNumber } from './spoken-number';

/** A phrase on offer as it is written in `text/`, or the number that was asked, in its unit. */
export type Said = string | number;

/** What was said, if anything; `unsure` is to be asked about ("Did you say …?"), never acted on. */
export type Understood = { sure: Said } | { unsure: Said } | undefined;

/** Seconds. Whoever talks longer without a pause says more than a phrase. */
export const LONGEST = 4.5;

/** How well sounds must fit better than decoys would, a tenth of a second; and what may be left over, in seconds. */
type Demands = { margin: number; leftOver: number };
const SURE: Demands = { margin: 80, leftOver: 0.3 };
const UNSURE: Demands = { margin: 40, leftOver: 0.5 };

/** Weighs what the engine found: whatever is said, it finds the phrase that fits best. */
export function hearingOf(hearing: Hearing | undefined, offer: Offer): Understood {
  if (!hearing || hearing.seconds > LONGEST) return undefined;
  const said = saidIn(hearing.words, offer);
  if (said === undefined) return undefined;
  if (meets(hearing, SURE)) return { sure: said };
  return meets(hearing, UNSURE) ? { unsure: said } : undefined;
}

function saidIn(words: string, { phrases, numbers }: Offer): Said | undefined {
  const phrase = phrases.find((each) => asHeard(each) === words);
  return phrase ?? (numbers && spokenNumber(numbers.kind, words, numbers));
}

const meets = (hearing: Hearing, { margin, leftOver }: Demands): boolean =>
  (hearing.margin ?? 0) >= margin && leftOverBy(hearing) <= leftOver;

/** How long decoys hear words where the phrase hears none: talk before, after or in the middle of it. */
const leftOverBy = ({ segments, against = [] }: Hearing): number =>
  against.reduce((sum, word) => sum + lengthOf(word) - sharedWith(word, segments), 0);

const lengthOf = ({ from, to }: Segment): number => to - from;

const sharedWith = (word: Segment, segments: readonly Segment[]): number =>
  segments.reduce(
    (sum, { from, to }) => sum + Math.max(0, Math.min(to, word.to) - Math.max(from, word.from)),
    0,
  );
