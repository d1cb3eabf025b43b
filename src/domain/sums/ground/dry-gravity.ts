import { brixFromGravity } from '../brix-from-gravity';
import { gravityFromBrix } from '../gravity-from-brix';
import { BY_PRODUCTS, NOT_SUGAR } from './must-composition';

/** A wine of about this gravity is all but dry; the extract counts per mass of it. */
const NEAR = 0.995;

/** The gravity at which nothing is left to ferment, by the same balance as `sugarLeft`. */
export function dryGravity(start: number): number {
  const original = brixFromGravity(start);
  const real = (original * start * (NOT_SUGAR + BY_PRODUCTS * (1 - NOT_SUGAR))) / NEAR;
  return gravityFromBrix((real - 0.1808 * original) / 0.8192);
}
