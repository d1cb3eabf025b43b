import { balling } from './ground/balling';
import { giveOrTake, type Interval } from './ground/interval';
import { BY_PRODUCTS, BY_PRODUCTS_VARY, NOT_SUGAR, NOT_SUGAR_VARIES } from './ground/must-composition';
import { readingUncertainty } from './reading-uncertainty';
import { requireWithin } from './ground/require-within';
import { waterDensity } from './water-density';

const GRAMS_PER_GRAVITY = 2140;

/** The gravity before the yeast, the gravity now, and the scale that both were read on. */
export type Ferment = { start: number; now: number; division?: number };

/**
 * Sugar that yeast could still ferment.
 * Units        SG 20/20 in, both; g/L (as glucose and fructose) out.
 * Range        start 1.000–1.170, now 0.980–1.170.
 * Uncertainty  2σ of the must's non-sugar, the yeast's by-products and the reading in quadrature: about 5 g/L
 *              from a start of 1.090. It cannot tell a dry wine from one with 4 g/L: only a sugar test can.
 * Errors       RangeError outside the range.
 * Source       real extract by Balling (Nielsen et al. 2007); non-sugar of must from WINETECH Technical
 *              Yearbook (2020) p. 161, table 1; by-products from memory.
 */
export function sugarLeft({ start, now, division = 0.001 }: Ferment): Interval {
  requireWithin('start gravity', start, 1, 1.17);
  requireWithin('gravity now', now, 0.98, 1.17);
  const { original, real } = balling(start, now);
  const before = (original / 100) * start * waterDensity(20);
  const extract = (real / 100) * now * waterDensity(20);
  const fermented = Math.max(0, before - extract);
  const by = Math.hypot(
    NOT_SUGAR_VARIES * before,
    BY_PRODUCTS_VARY * fermented,
    GRAMS_PER_GRAVITY * 2 * readingUncertainty({ division }),
  );
  return giveOrTake(extract - NOT_SUGAR * before - BY_PRODUCTS * fermented, by);
}
