import { icumsaDensity, icumsaWater } from './ground/icumsa-density';
import { requireWithin } from './ground/require-within';
import { rootBetween } from './ground/root-between';

/**
 * Strength of the sucrose solution that has a given relative density: the inverse of `gravityFromBrix`.
 * Units        SG 20/20 in; °Brix (% by mass, the same as °Plato here) out, negative below 1.000.
 * Range        0.980–1.400.
 * Uncertainty  0.03 °Brix against NBS C440 to 40 °Brix.
 * Errors       RangeError outside the range.
 * Source       ICUMSA SPS-4 (1998), over its own water at 20 °C, solved for the mass fraction.
 */
export function brixFromGravity(gravity: number): number {
  requireWithin('gravity', gravity, 0.98, 1.4);
  const density = gravity * icumsaWater(20);
  return 100 * rootBetween((massFraction) => icumsaDensity(massFraction, 20) - density, -0.06, 0.8);
}
