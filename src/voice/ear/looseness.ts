import type { Segment } from './decoder';

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
export function loosenessOf({
  segments,
  seconds,
}: {
  segments: readonly Segment[];
  seconds: number;
}): Looseness | undefined {
  const [first, last] = [segments[0], segments.at(-1)];
  if (!first || !last) return undefined;
  const spoken = segments.reduce((sum, { from, to }) => sum + to - from, 0);
  return { gaps: last.to - first.from - spoken, tail: seconds - last.to };
}

export const isWithin = (looseness: Looseness | undefined, { gaps, tail }: Looseness): boolean =>
  looseness !== undefined && looseness.gaps <= gaps && looseness.tail <= tail;
