import type { Belief } from './ferment-beliefs';
import type { Outcomes } from './ferment-outcomes';
import type { Interval } from './interval';
import { tenths } from './tenths';
import { yeastRate, type Warmth } from './warm-days';

/** What to look after before it is too late. Gravity at rest as an 80 % interval; days and °C. */
export type FermentWarning =
  | { code: 'stall'; probability: number; rest: Interval }
  | { code: 'cold'; celsius: number; warmEnough: number; daysLost: number }
  | { code: 'cooling'; celsius: number; warmEnough: number; inDays: number };

/**
 * A ferment that has not reached its limit: what it has been like, what is believed of it, what is asked of
 * it.
 */
export type Underway = {
  readings: readonly Warmth[];
  beliefs: readonly Belief[];
  outcomes: Outcomes;
  limit: number;
  warmEnough: number;
};

const LIKELY = 0.5;
const ABOVE = 0.0005;
const COSY = 21;
const COOLING_AHEAD = 3;
const LONGEST_DAYS = 90;

/** Every warning that is due: a stall first, then the cold. */
export const fermentWarnings = (underway: Underway): FermentWarning[] =>
  [stall(underway), cold(underway), cooling(underway)].filter((warning) => warning !== undefined);

/** More likely than not it comes to rest above the limit. */
function stall({ beliefs, limit }: Underway): FermentWarning | undefined {
  const rests = beliefs.map(({ rest }) => rest).filter((rest) => rest > limit + ABOVE);
  const probability = rests.length / beliefs.length;
  return probability < LIKELY ? undefined : { code: 'stall', probability, rest: tenths(rests) };
}

/** Too cold, and by how many days that puts off the limit, compared with 21 °C from now on. */
function cold({ readings, beliefs, outcomes, limit, warmEnough }: Underway): FermentWarning | undefined {
  const last = readings.at(-1);
  if (!last || last.celsius >= warmEnough) return undefined;
  const slower = 1 - yeastRate(last.celsius) / yeastRate(COSY);
  const ahead = beliefs.map((belief) => Math.min(outcomes.reaches(belief, limit) - last.day, LONGEST_DAYS));
  return {
    code: 'cold',
    celsius: last.celsius,
    warmEnough,
    daysLost: Math.max(0, tenths(ahead).value) * slower,
  };
}

/** Still warm enough, but on its way down. */
function cooling({ readings, warmEnough }: Underway): FermentWarning | undefined {
  const [before, last] = readings.slice(-2);
  if (!before || !last || last.celsius < warmEnough || last.celsius >= before.celsius) return undefined;
  const inDays = ((last.celsius - warmEnough) * (last.day - before.day)) / (before.celsius - last.celsius);
  return inDays <= COOLING_AHEAD ? { code: 'cooling', celsius: last.celsius, warmEnough, inDays } : undefined;
}
