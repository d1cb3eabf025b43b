import { balling } from './ground/balling';
import { ethanolWaterDensity } from './ethanol-water-density';
import { giveOrTake, type Interval } from './ground/interval';
import { readingUncertainty } from './reading-uncertainty';
import { requireWithin } from './ground/require-within';
import { waterDensity } from './water-density';

/** Non-sugar extract, yeast and evaporation, in % vol. */
const MODEL = 0.3;
const PERCENT_PER_GRAVITY = 134;
const SIMPLE_RULE = 131.25;

/** The gravity before the yeast, the gravity now, and the scale that both were read on. */
export type Drop = { start: number; finish: number; division?: number };

/**
 * Alcohol made by a fall of gravity.
 * Units        SG 20/20 in, both; % vol at 20 °C out. `simpleRule` is 131.25 times the fall, for comparison.
 * Range        start 1.000–1.170, finish 0.980–1.170; well founded for 1.030–1.110 and 0.988–1.040.
 * Uncertainty  0.3 % vol for must, with that of both readings added in quadrature: 0.35 on a scale of 0.001.
 * Errors       RangeError outside the range. A finish above the start is no alcohol.
 * Source       Balling, as deduced by Nielsen et al., Brauwelt International (2007); ethanol's density, OIML
 *              R 22.
 */
export function alcoholFromGravity({
  start,
  finish,
  division = 0.001,
}: Drop): Interval & { simpleRule: number } {
  requireWithin('start gravity', start, 1, 1.17);
  requireWithin('finish gravity', finish, 0.98, 1.17);
  const { alcohol } = balling(start, finish);
  const byVolume = (alcohol * finish * waterDensity(20)) / ethanolWaterDensity(1, 20);
  const readings = 2 * Math.SQRT2 * readingUncertainty({ division }) * PERCENT_PER_GRAVITY;
  return {
    ...giveOrTake(byVolume, Math.hypot(MODEL, readings)),
    simpleRule: Math.max(0, SIMPLE_RULE * (start - finish)),
  };
}
