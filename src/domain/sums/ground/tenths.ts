import type { Interval } from './interval';

const at = (sorted: readonly number[], share: number): number =>
  sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;

/** The middle of some equally likely values, with one in ten below `low` and one in ten above `high`. */
export function tenths(values: readonly number[]): Interval {
  const sorted = values.toSorted((a, b) => a - b);
  return { value: at(sorted, 0.5), low: at(sorted, 0.1), high: at(sorted, 0.9) };
}
