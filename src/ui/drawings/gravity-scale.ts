import type { Gravity } from '../../domain/gravity';

/** A piece of a gravity scale drawn from `top` to `bottom`: numbers rise towards the top, so that a ferment falls. On a stem it is the other way round (`stem.ts`). */
export type GravityScale = {
  highest: number;
  lowest: number;
  y: (gravity: Gravity) => number;
  /** Where lines go: `long` ones carry their number. */
  lines: { gravity: Gravity; long: boolean }[];
};

/** So many numbers at most, and so much height for each: a low scale has fewer. */
const MOST_NUMBERS = 6;
const HIGH = 24;
const STEPS = [5, 10, 20, 50, 100, 200, 500];
const ROOM = 20;

/** A scale that holds all these gravities with a little room, and few enough numbers to be read. */
export function gravityScale(gravities: readonly Gravity[], top: number, bottom: number): GravityScale {
  const span = Math.max(...gravities) - Math.min(...gravities) + 2 * ROOM;
  const wanted = Math.max(2, Math.min(MOST_NUMBERS, (bottom - top) / HIGH));
  const step = STEPS.find((each) => span / each <= wanted) ?? 500;
  const highest = Math.ceil((Math.max(...gravities) + ROOM) / step) * step;
  const lowest = Math.floor((Math.min(...gravities) - ROOM) / step) * step;
  const fine = step / 5;
  const count = Math.round((highest - lowest) / fine);
  return {
    highest,
    lowest,
    y: (gravity) => top + ((highest - gravity) / (highest - lowest)) * (bottom - top),
    lines: Array.from({ length: count + 1 }, (_, n) => ({
      gravity: (highest - n * fine) as Gravity,
      long: n % 5 === 0,
    })),
  };
}
