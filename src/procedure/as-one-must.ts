import { relativeDensity } from '../domain/gravity';
import { heldBack } from '../domain/gates/box-complete';
import type { Reading } from '../domain/reading';
import { blend } from '../domain/sums/blend';
import type { Litres } from '../domain/unit';
import type { Facts } from './facts';
import type { KitSheet } from './kit-sheet';

/**
 * A reading as it would have been with all of the batch's water in: water that foam had made wait, and that came in
 * later, has thinned the wine since. So readings from before and after tell of one must.
 */
export function asOneMust({ batchLitres }: KitSheet, facts: Facts, { gravity, takenAt }: Reading): number {
  const read = relativeDensity(gravity);
  const water = facts.done['add held-back water 1'];
  const held = heldBack(facts.brim, batchLitres as Litres);
  if (!water || takenAt >= water.at || held === 0) return read;
  return blend([
    { litres: batchLitres - held, gravity: read },
    { litres: held, gravity: 1 },
  ]).gravity;
}
