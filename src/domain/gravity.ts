import { decimal } from './decimal';
import { accepted, refused, type Result } from './result';
import type { Unit } from './unit';

/** Whole ten-thousandths of water's density: 9940 is SG 0.9940. Whole, so that "differs by 12" is exact. */
export type Gravity = Unit<'gravity'>;

/** How far apart the lines of a hydrometer are, in ten-thousandths: a scale of 0.001 or of 0.002. */
export type Division = 10 | 20;

const LOWEST_GRAVITY = 9800 as Gravity;
export const HIGHEST_GRAVITY = 11700 as Gravity;

/** A relative density such as 0.9940, rounded once, here, to whole ten-thousandths. */
export const asGravity = (relativeDensity: number): Gravity =>
  Math.round(relativeDensity * 10_000) as Gravity;

/** A gravity as the plain decimal that the sums work with. */
export const relativeDensity = (gravity: Gravity): number => gravity / 10_000;

/** A hydrometer reading as typed: "996", "0.996", "0,996" and "994.5" are all understood; out of range is never clamped. */
export function parseGravity(given: string): Result<Gravity> {
  const number = decimal(given);
  const value = asGravity(number >= 100 ? number / 1000 : number);
  return value >= LOWEST_GRAVITY && value <= HIGHEST_GRAVITY
    ? accepted(value)
    : refused({ code: 'gravity-misread', given, lowest: LOWEST_GRAVITY, highest: HIGHEST_GRAVITY });
}
