import { unchangedLimit } from './unchanged-limit';

const GRAIN = 10_000;

/** A corrected gravity and the scale that it was read on. */
export type ScaleReading = { gravity: number; division: number };

/**
 * Do two readings differ at all, or could it be the scale?
 * Units        SG 20/20 and SG per division in.
 * Range        divisions 0.0001–0.01.
 * Uncertainty  wrong once in 20 for equal gravities; differences are judged in whole ten-thousandths.
 * Errors       RangeError outside the range.
 * Source       `unchangedLimit`.
 */
export function differ(a: ScaleReading, b: ScaleReading): boolean {
  const apart = Math.round(Math.abs(a.gravity - b.gravity) * GRAIN);
  return apart > Math.round(unchangedLimit(a.division, b.division) * GRAIN);
}
