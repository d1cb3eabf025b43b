import { readingUncertainty } from './reading-uncertainty';

const GRAIN = 10_000;

/**
 * The largest difference between two readings that can still be no difference at all.
 * Units        SG per division of each scale in; SG out, in whole ten-thousandths.
 * Range        divisions 0.0001–0.01.
 * Uncertainty  19 times in 20 for one instrument handled alike; the scale's own error cancels.
 * Errors       RangeError outside the range.
 * Source       twice the standard uncertainty of a difference, JCGM 100 (from memory): 0.0012 on a scale of
 *              0.001, 0.0019 on one of 0.002.
 */
export function unchangedLimit(division: number, otherDivision = division): number {
  const both = Math.hypot(readingUncertainty({ division }), readingUncertainty({ division: otherDivision }));
  return Math.round(2 * both * GRAIN) / GRAIN;
}
