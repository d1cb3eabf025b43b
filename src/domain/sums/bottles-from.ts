import { requireWithin } from './ground/require-within';

const SPARE_CORKS = 0.05;
const FEWEST_SPARE_CORKS = 2;
/** Keeps 1.13 − 0.38 litres a whole bottle, although in binary they are a hair less than 0.75. */
const ROUNDING = 1e-9;

/**
 * Wine to be bottled; what one bottle holds (750 ml) and what stays in vessel, hose and glass (0.25 L) unless
 * given.
 */
export type Bottling = { litres: number; bottleMl?: number; lossLitres?: number };

/**
 * Bottles that a wine fills, and corks to have at hand.
 * Units        litres and ml in; whole bottles and corks, and ml that do not fill another, out.
 * Range        0–100 L, bottle 100–5000 ml, losses 0–20 L.
 * Uncertainty  one bottle: fill heights vary by 2 %, and how much the lees keep is a guess.
 * Errors       RangeError outside the range.
 * Source       division; losses and one spare cork in twenty (two at least) are common practice.
 */
export function bottlesFrom({ litres, bottleMl = 750, lossLitres = 0.25 }: Bottling): {
  bottles: number;
  corks: number;
  leftMl: number;
} {
  requireWithin('litres', litres, 0, 100);
  requireWithin('bottle', bottleMl, 100, 5000);
  requireWithin('losses', lossLitres, 0, 20);
  const ml = Math.max(0, litres - lossLitres) * 1000;
  const bottles = Math.floor(ml / bottleMl + ROUNDING);
  const spare = Math.max(FEWEST_SPARE_CORKS, Math.ceil(bottles * SPARE_CORKS));
  return {
    bottles,
    corks: bottles === 0 ? 0 : bottles + spare,
    leftMl: Math.max(0, ml - bottles * bottleMl),
  };
}
