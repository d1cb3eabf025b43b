import { requireWithin } from './ground/require-within';

const LITRES_PER_KILOGRAM = 0.618;

/**
 * By how much sugar swells the must that it dissolves in.
 * Units        grams of sucrose in; litres out.
 * Range        0–30 000 g, in must of up to 30 °Brix.
 * Uncertainty  0.5 %.
 * Errors       RangeError outside the range.
 * Source       27 CFR 24.181 (1991): 13.5 lb make 1 US gallon; the CRC Handbook's specific volumes agree.
 */
export function volumeOfSugar(grams: number): number {
  requireWithin('sugar', grams, 0, 30_000);
  return (grams / 1000) * LITRES_PER_KILOGRAM;
}
