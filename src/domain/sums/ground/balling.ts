import { brixFromGravity } from '../brix-from-gravity';

/**
 * Grams of extract that become one gram of alcohol, in a must of that original extract; the rest is gas and
 * yeast.
 */
export const extractPerAlcohol = (originalExtract: number): number => 2.0665 - 0.010665 * originalExtract;

/**
 * What Balling's balance says is in a liquid that started at one gravity and stands at another, in % by mass.
 * It cannot have fermented more extract than there was, nor less than none.
 */
export function balling(start: number, now: number): { original: number; real: number; alcohol: number } {
  const original = Math.max(0, brixFromGravity(start));
  const balance = 0.1808 * original + 0.8192 * brixFromGravity(now);
  const real = Math.min(Math.max(balance, 0), original);
  return { original, real, alcohol: (original - real) / extractPerAlcohol(original) };
}
