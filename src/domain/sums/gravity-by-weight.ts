import { atTwenty } from './ground/at-twenty';
import { giveOrTake, type Interval } from './ground/interval';
import { requireWithin } from './ground/require-within';
import { waterDensity } from './water-density';

const AIR = 1.2;
/** How differently "full to the brim" comes out, in grams. */
const BRIM = 0.3;

/**
 * The same bottle full to the brim of water and of wine, both at one temperature, its own weight taken off;
 * what the scale shows as its last digit (1 g); the batch's start gravity, where it is known.
 */
export type Weighing = {
  waterGrams: number;
  wineGrams: number;
  celsius: number;
  scaleGrams?: number;
  start?: number;
};

/**
 * Gravity by weighing a full bottle: for when the hydrometer is broken. Too coarse alone to pass a gate.
 * Units        grams, °C and SG in; SG 20/20 out.
 * Range        water 100–30 000 g, wine 0.97–1.18 times as heavy, 0–40 °C, scale 0.001–10 g, start
 *              1.020–1.170.
 * Uncertainty  2σ of two weighings and of the brim: 0.0019 with 750 g on a scale of 1 g.
 * Errors       RangeError outside the range.
 * Source       a pyknometer, with the air's lift (1.2 kg/m³) taken off; to 20 °C as `correctHydrometer`.
 */
export function gravityByWeight(weighing: Weighing): Interval {
  const { waterGrams, wineGrams, celsius, scaleGrams = 1, start } = weighing;
  requireWithin('water', waterGrams, 100, 30_000);
  requireWithin('wine', wineGrams / waterGrams, 0.97, 1.18);
  requireWithin('temperature', celsius, 0, 40);
  requireWithin('scale', scaleGrams, 0.001, 10);
  if (start !== undefined) requireWithin('start gravity', start, 1.02, 1.17);
  const water = waterDensity(celsius);
  const relative = ((wineGrams / waterGrams) * (water - AIR) + AIR) / water;
  const oneWeighing = Math.hypot((scaleGrams * Math.SQRT2) / Math.sqrt(12), BRIM);
  return giveOrTake(atTwenty(relative, celsius, start), (2 * Math.SQRT2 * oneWeighing) / waterGrams);
}
