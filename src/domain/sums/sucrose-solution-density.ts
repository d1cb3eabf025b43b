import { icumsaDensity } from './ground/icumsa-density';
import { requireWithin } from './ground/require-within';

/**
 * Density of sucrose dissolved in water; must is treated as such a solution.
 * Units        mass fraction (0.22 is 22 °Brix) and °C in; kg/m³ out.
 * Range        0–0.85, 0–80 °C.
 * Uncertainty  0.05 kg/m³ against the CRC table, which is its rounding; within 0.03 °Brix of NBS C440 to 40
 *              °Brix, within 0.0006 of its gravity at 85.
 * Errors       RangeError outside the range.
 * Source       ICUMSA SPS-4 (1998); Bubník, Kadlec, Urban, Bruhns, Sugar Technologists Manual (1995) p. 164,
 *              with that polynomial's own water.
 */
export function sucroseSolutionDensity(massFraction: number, celsius: number): number {
  requireWithin('sucrose mass fraction', massFraction, 0, 0.85);
  requireWithin('solution temperature', celsius, 0, 80);
  return icumsaDensity(massFraction, celsius);
}
