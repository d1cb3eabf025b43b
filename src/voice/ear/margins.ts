import type { Segment } from './decoder';
import type { Answer } from './read-answer';

/** Tenths of a second, to which a margin is counted. */
const A_TENTH = 0.1;

/** How well the sounds from one moment to another fit a path; a segment's fit is taken to be even over its time. */
const fitOf = (path: readonly Segment[], from: number, to: number): number =>
  path.reduce((sum, segment) => {
    const shared = Math.min(to, segment.to) - Math.max(from, segment.from);
    return shared > 0 ? sum + (segment.score * shared) / (segment.to - segment.from) : sum;
  }, 0);

/** How much better the sounds fit what was heard than another path: over the whole utterance, and within its words. */
export function margins(heard: Answer, other: Answer): { margin: number; inside: number } {
  const over = (from: number, to: number): number =>
    ((fitOf(heard.path, from, to) - fitOf(other.path, from, to)) * A_TENTH) / (to - from);
  const [first, last] = [heard.segments[0], heard.segments.at(-1)];
  const margin = over(0, heard.seconds);
  return { margin, inside: first && last ? over(first.from, last.to) : margin };
}
