import { bottlePressure } from '../domain/sums/bottle-pressure';
import type { Gravity } from '../domain/gravity';

/** Sugar in each litre for a gravity of 0.0001 near dryness, as in `sums/sugar-left.ts`. */
const GRAMS_PER_TEN_THOUSANDTH = 0.214;
/** An ordinary bottle in an ordinary room, its wine holding the gas that open wine holds (computed in `reference/`). */
const BOTTLE = { celsius: 20, headspaceMl: 15, bottleMl: 750, dissolved: 1.46 };
const MOST_GRAMS = 30;

/** What a gravity above the limit means: grams of sugar in each litre, and bar in a closed bottle where that can be told. */
export function unfermented(gravity: Gravity, limit: Gravity): { grams: number; bar?: number } {
  const grams = Math.max(0, gravity - limit) * GRAMS_PER_TEN_THOUSANDTH;
  return grams > MOST_GRAMS ? { grams } : { grams, bar: bottlePressure({ ...BOTTLE, sugar: grams }) };
}
