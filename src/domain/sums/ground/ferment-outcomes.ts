import type { Belief, Seen } from './ferment-beliefs';
import { shareLeft, whenLeft } from './ferment-curve';
import type { WarmDays } from './warm-days';

/** A fall over the gate's hours that no scale can tell from none. */
const UNCHANGED = 0.0005;
const STEP_DAYS = 0.25;
const LONGEST_DAYS = 60;

/** What some beliefs come to: the gravity on a day, and the days on which something is reached. */
export type Outcomes = {
  gravityOn: (belief: Belief, day: number) => number;
  reaches: (belief: Belief, gravity: number) => number;
  unchangedFrom: (belief: Belief, day: number, days: number) => number;
};

/** Days are counted in the warmth that is known, and in the last one known after that. Infinity is never. */
export function fermentOutcomes(first: Seen, warm: WarmDays): Outcomes {
  const gravityOn = ({ course, rest }: Belief, day: number) =>
    rest + ((first.gravity - rest) * shareLeft(course, warm.until(day))) / shareLeft(course, first.warm);
  const reaches = ({ course, rest }: Belief, gravity: number) => {
    if (rest >= gravity) return Number.POSITIVE_INFINITY;
    const share = Math.min(1, (gravity - rest) / (first.gravity - rest));
    return warm.dayOf(whenLeft(course, share * shareLeft(course, first.warm)));
  };
  const unchangedFrom = (belief: Belief, from: number, days: number) => {
    for (let day = from; day < LONGEST_DAYS; day += STEP_DAYS)
      if (gravityOn(belief, day) - gravityOn(belief, day + days) <= UNCHANGED) return day;
    return Number.POSITIVE_INFINITY;
  };
  return { gravityOn, reaches, unchangedFrom };
}
