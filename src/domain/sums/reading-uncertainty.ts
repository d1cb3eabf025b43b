import { requireWithin } from './ground/require-within';

/** What one degree of error in the sample's temperature does to a corrected reading. */
const GRAVITY_PER_KELVIN = 0.00025;

/** The scale's division, how far the thermometer may be off, and how well a reading repeats. */
export type Circumstances = { division: number; kelvin?: number; repeats?: number };

/**
 * Standard uncertainty of one corrected hydrometer reading.
 * Units        SG per division, K and SG in; SG out (one σ).
 * Range        division 0.0001–0.01, kelvin 0–5, repeats 0–0.005.
 * Uncertainty  it is one: 0.00043 on a scale of 0.001, 0.00066 on one of 0.002. An error of the scale itself
 *              is not in it: the same instrument carries it into every reading.
 * Errors       RangeError outside the range.
 * Source       JCGM 100 (GUM): a rectangular division, thermometer and repeatability in quadrature (from
 *              memory).
 */
export function readingUncertainty({ division, kelvin = 0.5, repeats = 0.0003 }: Circumstances): number {
  requireWithin('division', division, 0.0001, 0.01);
  requireWithin('thermometer error', kelvin, 0, 5);
  requireWithin('repeatability', repeats, 0, 0.005);
  return Math.hypot(division / Math.sqrt(12), GRAVITY_PER_KELVIN * kelvin, repeats);
}
