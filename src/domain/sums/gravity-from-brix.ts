import { icumsaDensity, icumsaWater } from './ground/icumsa-density';
import { requireWithin } from './ground/require-within';

/**
 * Relative density of a sucrose solution of a given strength.
 * Units        °Brix (% by mass, the same as °Plato here) in; SG 20/20 in vacuo out.
 * Range        −5 to 80 °Brix; below 0 it is the apparent extract of a liquid lighter than water.
 * Uncertainty  0.0001; tables of "apparent" gravity, weighed in air, lie up to 0.0001 above at 20 °Brix.
 * Errors       RangeError outside the range.
 * Source       ICUMSA SPS-4 (1998), over its own water at 20 °C.
 */
export function gravityFromBrix(brix: number): number {
  requireWithin('Brix', brix, -5, 80);
  return icumsaDensity(brix / 100, 20) / icumsaWater(20);
}
