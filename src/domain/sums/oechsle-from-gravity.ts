import { requireWithin } from './ground/require-within';

/**
 * Degrees Oechsle: by how many thousandths a must is denser than water.
 * Units        SG 20/20 in; °Oechsle out.
 * Range        0.980–1.400.
 * Uncertainty  none of its own.
 * Errors       RangeError outside the range.
 * Source       definition of the scale, in its modern use at 20/20 °C.
 */
export function oechsleFromGravity(gravity: number): number {
  requireWithin('gravity', gravity, 0.98, 1.4);
  return (gravity - 1) * 1000;
}
