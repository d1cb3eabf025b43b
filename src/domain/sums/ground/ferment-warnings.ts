import type { Belief } from './ferment-beliefs';
import type { Outcomes } from './ferment-outcomes';
import type { Interval } from './interval';
import { warmDays, type WarmDays, type Warmth } from './warm-days';
import { weightedQuantiles } from './weighted-quantile';

/** What to look after before it is too late. Gravity at rest as an 80 % interval; days and °C. */
export type FermentWarning =
  | { code: 'stall'; probability: number; rest: Interval }
  | { code: 'cold'; celsius: number; warmEnough: number; daysLost: number }
  | { code: 'cooling'; celsius: number; warmEnough: number; inDays: number };

type Ferment = {
  readings: readonly Warmth[];
  beliefs: readonly Belief[];
  outcomes: Outcomes;
  warm: WarmDays;
  limit: number;
  warmEnough: number;
  dry: boolean;
};

const LIKELY = 0.5;
const ABOVE = 0.0005;
const COSY = 21;
const COOLING_AHEAD = 3;
const NO_FASTER = 90;

export const fermentWarnings = (ferment: Ferment): FermentWarning[] =>
  [stall(ferment), cold(ferment), cooling(ferment)].filter((warning) => warning !== undefined);

/** More likely than not it comes to rest above the limit. */
function stall({ beliefs, limit, dry }: Ferment): FermentWarning | undefined {
  const stuck = beliefs.filter(({ rest }) => rest > limit + ABOVE);
  const probability = stuck.reduce((sum, { weight }) => sum + weight, 0);
  if (dry || probability < LIKELY) return undefined;
  const rests = stuck.map(({ rest, weight }) => ({ value: rest, weight }));
  const [low = 1, value = 1, high = 1] = weightedQuantiles(rests, [0.1, 0.5, 0.9]);
  return { code: 'stall', probability, rest: { value, low, high } };
}

function cold(ferment: Ferment): FermentWarning | undefined {
  const last = ferment.readings.at(-1);
  if (!last || last.celsius >= ferment.warmEnough) return undefined;
  return {
    code: 'cold',
    celsius: last.celsius,
    warmEnough: ferment.warmEnough,
    daysLost: daysLost(ferment, last),
  };
}

/** By how many days the cold puts off the limit, compared with 21 °C from now on. */
function daysLost({ beliefs, outcomes, warm, limit, dry }: Ferment, last: Warmth): number {
  if (dry) return 0;
  const cosy = warmDays([{ day: last.day, celsius: COSY }]);
  const [days = 0] = weightedQuantiles(
    beliefs.map((belief) => {
      const reached = Math.min(outcomes.reaches(belief, limit), last.day + NO_FASTER);
      const ahead = warm.until(reached) - warm.until(last.day);
      return { value: Math.max(0, reached - cosy.dayOf(Math.max(0, ahead))), weight: belief.weight };
    }),
    [0.5],
  );
  return days;
}

/** Still warm enough, but on its way down. */
function cooling({ readings, warmEnough }: Ferment): FermentWarning | undefined {
  const [before, last] = readings.slice(-2);
  if (!before || !last || last.celsius < warmEnough) return undefined;
  const perDay = (before.celsius - last.celsius) / (last.day - before.day);
  const inDays = (last.celsius - warmEnough) / perDay;
  return perDay > 0 && inDays <= COOLING_AHEAD
    ? { code: 'cooling', celsius: last.celsius, warmEnough, inDays }
    : undefined;
}
