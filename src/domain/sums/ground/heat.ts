import { brixFromGravity } from '../brix-from-gravity';
import { requireWithin } from './require-within';

/** A litre of water at the bench, in kg. */
const KILOGRAMS_PER_LITRE = 0.998;

/** An amount of water, juice or concentrate and how warm it is; its gravity is that of water unless given. */
export type Warm = { litres: number; celsius: number; gravity?: number };

/** Heat to warm a part by its terms in t and t²: kJ/K and kJ/K². */
export type Heat = { linear: number; square: number };

/** Water and dissolved sugar each bring their share (Kadlec's enthalpy of pure sucrose solutions). */
export function heatOf({ litres, celsius, gravity = 1 }: Warm): Heat {
  requireWithin('litres', litres, 0, 100);
  requireWithin('temperature', celsius, 0, 100);
  const kilograms = litres * gravity * KILOGRAMS_PER_LITRE;
  const brix = Math.max(0, brixFromGravity(gravity));
  return {
    linear: kilograms * (4.1868 - 0.0297 * brix + 0.0046 * brix),
    square: kilograms * 3.75e-5 * brix,
  };
}

/** Heat held at a temperature, counted from 0 °C. */
export const heatAt = ({ linear, square }: Heat, celsius: number): number =>
  (linear + square * celsius) * celsius;

/** The heats of several parts taken together. */
export const together = (heats: readonly Heat[]): Heat => ({
  linear: heats.reduce((sum, heat) => sum + heat.linear, 0),
  square: heats.reduce((sum, heat) => sum + heat.square, 0),
});
