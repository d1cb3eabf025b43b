import type { Belief, Seen } from './ferment-beliefs';
import { shareLeft, whenLeft } from './ferment-curve';

/** A fall over the gate's days that no scale can tell from none. */
const UNCHANGED = 0.0005;
const PRECISE_DAYS = 0.25;
const AHEAD_DAYS = 30;

/**
 * Where time stands: the day, in warm days too, how many of those a day will bring, and how unsure that pace
 * is.
 */
export type Present = { day: number; warm: number; pace: number; unsure: number };

/**
 * What one belief comes to: the gravity on a day, and the days on which something is reached. Infinity is
 * never.
 */
export type Outcomes = {
  gravityOn: (belief: Belief, day: number) => number;
  reaches: (belief: Belief, gravity: number) => number;
  unchangedFrom: (belief: Belief, day: number, days: number) => number;
};

/**
 * What beliefs come to, counting on from the present at its pace, which each belief hurries in its own way.
 */
export function fermentOutcomes(first: Seen, present: Present): Outcomes {
  const paceOf = ({ hurry }: Belief) => present.pace * Math.exp(hurry * present.unsure);
  const gravityOn = (belief: Belief, day: number) => {
    const warm = present.warm + (day - present.day) * paceOf(belief);
    const share = shareLeft(belief.course, warm) / belief.outset;
    return belief.rest + (first.gravity - belief.rest) * share;
  };
  const reaches = (belief: Belief, gravity: number) => {
    if (belief.rest >= gravity) return Number.POSITIVE_INFINITY;
    const share = Math.min(1, (gravity - belief.rest) / (first.gravity - belief.rest));
    const warm = whenLeft(belief.course, share * belief.outset);
    return present.day + (warm - present.warm) / paceOf(belief);
  };
  const unchangedFrom = (belief: Belief, from: number, days: number) => {
    const still = (day: number) => gravityOn(belief, day) - gravityOn(belief, day + days) <= UNCHANGED;
    if (still(from)) return from;
    let [moving, unchanged] = [from, from + AHEAD_DAYS];
    if (!still(unchanged)) return Number.POSITIVE_INFINITY;
    while (unchanged - moving > PRECISE_DAYS) {
      const between = (moving + unchanged) / 2;
      if (still(between)) unchanged = between;
      else moving = between;
    }
    return unchanged;
  };
  return { gravityOn, reaches, unchangedFrom };
}
