import { alcoholByVolumeFromMass } from './alcohol-by-volume-from-mass';
import { requireWithin } from './ground/require-within';
import { rootBetween } from './ground/root-between';

/**
 * Alcoholic strength by mass of a mixture of ethanol and water whose strength by volume is known.
 * Units        % by volume at 20 °C in; % by mass out.
 * Range        0–100 %.
 * Uncertainty  0.002 % by mass, from the densities.
 * Errors       RangeError outside the range.
 * Source       OIML R 22 (1975): the inverse of `alcoholByVolumeFromMass`.
 */
export function alcoholByMassFromVolume(percentByVolume: number): number {
  requireWithin('alcohol by volume', percentByVolume, 0, 100);
  return rootBetween((byMass) => alcoholByVolumeFromMass(byMass) - percentByVolume, 0, 100);
}
