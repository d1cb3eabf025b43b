/** A stretch of time, in seconds. */
export type Span = { from: number; to: number };

export const lengthOf = ({ from, to }: Span): number => to - from;

/** How long two stretches run side by side. */
export const overlapOf = (one: Span, other: Span): number =>
  Math.max(0, Math.min(one.to, other.to) - Math.max(one.from, other.from));

/** From the beginning of the first to the end of the last; nothing where there are none. */
export function spanOf(spans: readonly Span[]): Span | undefined {
  const [first, last] = [spans[0], spans.at(-1)];
  return first && last && { from: first.from, to: last.to };
}
