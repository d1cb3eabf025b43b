import type { Division, Gravity } from '../../domain/gravity';
import type { Look, Round } from './round';

/** How far the rim climbs the stem, and how far the near edge of the surface is off when the eye is: in ten-thousandths. */
const CLIMB: Record<Division, number> = { 10: 20, 20: 30 };
const PARALLAX: Record<Division, number> = { 10: 30, 20: 50 };
const NUMBERED: Record<Division, number> = { 10: 50, 20: 100 };

/** What can be taken for the reading. */
export type Seen = {
  /** Where the flat of the surface meets the stem: the reading, if it floats free. */
  flat: Gravity;
  /** The top of the rim that climbs the glass: higher on the stem, so a lower number. */
  rim: Gravity;
  /** The near edge of the surface: seen from above it lies lower on the stem, from below higher. */
  edge: Gravity;
  isHeld: boolean;
};

export function seen({ division, truth, held }: Round, { eye, freed }: Look): Seen {
  const isHeld = held !== undefined && !freed;
  const flat = truth + (isHeld ? held.off : 0);
  const aside = { above: PARALLAX[division], level: 0, below: 0 - PARALLAX[division] }[eye];
  return {
    flat: flat as Gravity,
    rim: (flat - CLIMB[division]) as Gravity,
    edge: (flat + aside) as Gravity,
    isHeld,
  };
}

/** The number above the surface on the stem, from which lines are counted down. */
export const numberAbove = (gravity: Gravity, division: Division): Gravity =>
  (Math.floor(gravity / NUMBERED[division]) * NUMBERED[division]) as Gravity;
/** And the next one, below it. */
export const numberBelow = (gravity: Gravity, division: Division): Gravity =>
  (numberAbove(gravity, division) + NUMBERED[division]) as Gravity;
