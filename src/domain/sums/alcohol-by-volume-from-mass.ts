import { ethanolWaterDensity } from './ethanol-water-density';
import { requireWithin } from './ground/require-within';

/**
 * Alcoholic strength by volume of a mixture of ethanol and water whose strength by mass is known.
 * Units        % by mass in; % by volume at 20 °C out.
 * Range        0–100 %.
 * Uncertainty  0.002 % vol, from the densities.
 * Errors       RangeError outside the range.
 * Source       OIML R 22 (1975): q = p · ρ(p, 20 °C) / ρ(1, 20 °C).
 */
export function alcoholByVolumeFromMass(percentByMass: number): number {
  requireWithin('alcohol by mass', percentByMass, 0, 100);
  const percent = (percentByMass * ethanolWaterDensity(percentByMass / 100, 20)) / ethanolWaterDensity(1, 20);
  return Math.min(percent, 100);
}
