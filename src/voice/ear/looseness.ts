import { lengthOf, spanOf, type Span } from './spans';

type Utterance = { segments: readonly Span[]; seconds: number };

/** How loosely words stand in an utterance, in seconds. */
export type Looseness = {
  /** How far they stand apart in all. */
  gaps: number;
  /** What follows the last. */
  tail: number;
};

/** Looser than this is no phrase, however well it fits: talk in which the engine found its words. */
export const LOOSEST: Looseness = { gaps: 0.4, tail: 0.6 };

/** Nothing where there are no words. */
export function loosenessOf({ segments, seconds }: Utterance): Looseness | undefined {
  const span = spanOf(segments);
  if (!span) return undefined;
  const spoken = segments.reduce((sum, word) => sum + lengthOf(word), 0);
  return { gaps: lengthOf(span) - spoken, tail: seconds - span.to };
}

export const isWithin = (looseness: Looseness | undefined, { gaps, tail }: Looseness): boolean =>
  looseness !== undefined && looseness.gaps <= gaps && looseness.tail <= tail;
