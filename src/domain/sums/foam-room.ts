import { requireWithin } from './ground/require-within';

const AMPLE = 1.25;
const LEAST = 1.08;
const MOST_HELD_BACK = 0.1;

/** What the first vessel holds to the brim, and the whole batch, in litres. */
export type Vessel = { brimLitres: number; batchLitres: number };

/** The room above the batch, and how much of its water to hold back until the foam has fallen. */
export type FoamRoom = { code: 'enough' | 'tight' | 'too-small'; litres: number; holdBackLitres: number };

/**
 * Room for foam above a batch that is about to ferment.
 * Units        litres in and out; `litres` is negative where the batch does not fit at all.
 * Range        0.1–200 L each.
 * Uncertainty  a rule of thumb: foam differs with the yeast, the must and the warmth.
 * Errors       RangeError outside the range. Below 1.08 of the batch the vessel is too small, below 1.25 it
 *              is tight.
 * Source       common practice; at most a tenth of the batch is held back as water.
 */
export function foamRoom({ brimLitres, batchLitres }: Vessel): FoamRoom {
  requireWithin('brim', brimLitres, 0.1, 200);
  requireWithin('batch', batchLitres, 0.1, 200);
  const ratio = brimLitres / batchLitres;
  const holdBack = batchLitres - brimLitres / AMPLE;
  return {
    code: ratio >= AMPLE ? 'enough' : ratio >= LEAST ? 'tight' : 'too-small',
    litres: brimLitres - batchLitres,
    holdBackLitres: Math.min(Math.max(holdBack, 0), MOST_HELD_BACK * batchLitres),
  };
}
