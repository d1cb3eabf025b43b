import { requireWithin } from './ground/require-within';

/** The bore of a neck, and the gap below its stopper as a depth or as a volume. */
export type Gap = { boreMm: number } & ({ mm: number } | { ml: number });

/**
 * The gap below a stopper, as a depth and as a volume: the one that was measured gives the other.
 * Units        mm and ml in and out.
 * Range        bore 10–200 mm, depth 0–500 mm, volume 0–20 000 ml; within the straight part of the neck.
 * Uncertainty  exact for a round, straight neck: measure the real bore, since 1 mm in 30 is 7 % of the
 *              volume.
 * Errors       RangeError outside the range.
 * Source       volume of a cylinder.
 */
export function headspace(gap: Gap): { mm: number; ml: number } {
  requireWithin('bore', gap.boreMm, 10, 200);
  const mlPerMm = (Math.PI * gap.boreMm ** 2) / 4000;
  if ('mm' in gap) {
    requireWithin('depth', gap.mm, 0, 500);
    return { mm: gap.mm, ml: gap.mm * mlPerMm };
  }
  requireWithin('volume', gap.ml, 0, 20_000);
  return { mm: gap.ml / mlPerMm, ml: gap.ml };
}
