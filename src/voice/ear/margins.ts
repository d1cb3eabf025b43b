import type { Segment } from './decoder';
import type { Answer } from './read-answer';
import { lengthOf, overlapOf, spanOf, type Span } from './spans';

/** Tenths of a second, to which a margin is counted. */
const A_TENTH = 0.1;

/** How well the sounds of a span fit a path; a segment's fit is taken to be even over its time. */
const fitOf = (path: readonly Segment[], span: Span): number =>
  path.reduce((sum, segment) => {
    const shared = overlapOf(span, segment);
    // A joint of the grammar takes no time.
    return shared > 0 ? sum + (segment.score * shared) / lengthOf(segment) : sum;
  }, 0);

/** How much better the sounds fit what was heard than another path: over the whole utterance, and within its words. */
export function margins(heard: Answer, other: Answer): { margin: number; inside: number } {
  const over = (span: Span): number =>
    ((fitOf(heard.path, span) - fitOf(other.path, span)) * A_TENTH) / lengthOf(span);
  const whole = { from: 0, to: heard.seconds };
  return { margin: over(whole), inside: over(spanOf(heard.segments) ?? whole) };
}
