import { dryGravity } from './ground/dry-gravity';
import { fermentBeliefs, type Belief, type Rest, type Seen } from './ground/ferment-beliefs';
import { fermentOutcomes, type Outcomes, type Present } from './ground/ferment-outcomes';
import { fermentWarnings, type FermentWarning } from './ground/ferment-warnings';
import type { Interval } from './ground/interval';
import { requireWithin } from './ground/require-within';
import { tenths } from './ground/tenths';
import { warmDays, yeastRate } from './ground/warm-days';
import { readingUncertainty } from './reading-uncertainty';

/** A corrected gravity, the wine's own warmth, and how many days after the yeast it was read. */
export type ForecastReading = { day: number; gravity: number; celsius: number };

/**
 * What the gate will ask for, the house's own where left out; and the start gravity, where the first reading
 * is not it.
 */
export type ForecastTerms = {
  limit?: number;
  hoursApart?: number;
  minimumDays?: number;
  warmEnough?: number;
  start?: number;
};

/** Days since the yeast. `high` is absent where more than one outcome in ten never gets there. */
export type ForecastDay =
  | { code: 'reached'; day: number }
  | { code: 'expected'; value: number; low: number; high?: number }
  | { code: 'not-expected' };

/** Each interval holds four outcomes in five: one in ten lies below `low`, one in ten above `high`. */
export type Forecast = {
  curve: (Interval & { day: number })[];
  limitReached: ForecastDay;
  gateOpens: ForecastDay;
  warnings: FermentWarning[];
};

type Readings = readonly [ForecastReading, ...ForecastReading[]];

const DAYS_AHEAD = 14;
const HORIZON = 60;
/** Less than a minute and a half tells nothing of the pace. */
const SOME = 0.001;
/** A standard normal's tenth. */
const TENTH = 1.2816;
/**
 * A ferment's pace wanders by this much, and by this share of every change that its warmth has made to it.
 */
const WANDERS = 0.25;
const WARMTH_DOUBTED = 0.35;

/**
 * How a ferment will go on, from its readings so far.
 * Units        days since pitching, SG 20/20, °C in; days and SG out.
 * Range        1–60 readings on days 0–60, 0.980–1.170, 0–40 °C; limit 0.985–1.010; one must, fermenting
 *              once.
 * Uncertainty  is the result: courses of ferments, weighed by how well each explains the readings, in the
 *              warmth that was read and, from the last reading on, in the last one. Before the third reading
 *              it is wide.
 * Errors       RangeError outside the range.
 * Source       Michaelis and Menten's uptake by a yeast that grows, then tires of alcohol (the form of
 *              Coleman et al. 2007), in days weighted by warmth (Ough & Amerine 1961: the log of the rate
 *              runs straight in 1/T; twice as fast for 10 °C from memory). What is expected before the first
 *              reading is our own judgement.
 */
export function forecastGravity(given: readonly ForecastReading[], terms: ForecastTerms = {}): Forecast {
  const readings = inOrder(given);
  const { limit, hoursApart, minimumDays, warmEnough, start } = complete(terms, readings);
  const seen = asSeen(readings);
  const present = presentOf(readings, seen);
  const beliefs = fermentBeliefs(seen, restsFrom(start));
  const outcomes = fermentOutcomes(seen[0], present);
  const dry = readings[readings.findLastIndex(({ gravity }) => gravity > limit) + 1];
  const reach = beliefs.map((belief) => dry?.day ?? Math.max(outcomes.reaches(belief, limit), present.day));
  const daysApart = hoursApart / 24;
  const opens = beliefs.map((belief, index) => {
    const unchanged = outcomes.unchangedFrom(belief, reach[index] ?? HORIZON, daysApart);
    return Math.max(unchanged + daysApart, minimumDays, present.day);
  });
  return {
    curve: curveOf(beliefs, outcomes, present.day),
    limitReached: dry ? { code: 'reached', day: dry.day } : dayOf(reach),
    gateOpens: dayOf(opens),
    warnings: dry ? [] : fermentWarnings({ readings, beliefs, outcomes, limit, warmEnough }),
  };
}

function complete(terms: ForecastTerms, [{ gravity }]: Readings): Required<ForecastTerms> {
  const house = { limit: 0.996, hoursApart: 48, minimumDays: 0, warmEnough: 18, start: gravity };
  const asked = { ...house, ...terms };
  requireWithin('dry limit', asked.limit, 0.985, 1.01);
  requireWithin('hours apart', asked.hoursApart, 0, 400);
  requireWithin('minimum days', asked.minimumDays, 0, HORIZON);
  requireWithin('warm enough', asked.warmEnough, 0, 40);
  requireWithin('start gravity', asked.start, 0.98, 1.17);
  return asked;
}

function inOrder(given: readonly ForecastReading[]): Readings {
  requireWithin('number of readings', given.length, 1, 60);
  for (const { day, gravity, celsius } of given) {
    requireWithin('day', day, 0, HORIZON);
    requireWithin('gravity', gravity, 0.98, 1.17);
    requireWithin('wine temperature', celsius, 0, 40);
  }
  return given.toSorted((a, b) => a.day - b.day) as [ForecastReading, ...ForecastReading[]];
}

function asSeen(readings: Readings): [Seen, ...Seen[]] {
  const warm = warmDays(readings);
  return readings.map(({ gravity }, index) => ({ gravity, warm: warm[index] ?? 0 })) as [Seen, ...Seen[]];
}

/**
 * The pace from now on is that of the last warmth, the less sure the more it differs from what has been seen.
 */
function presentOf(readings: Readings, seen: readonly Seen[]): Present {
  const [last, warm] = [readings.at(-1) ?? readings[0], seen.at(-1)?.warm ?? 0];
  const pace = yeastRate(last.celsius);
  const change = warm > SOME && last.day > SOME ? Math.log((pace * last.day) / warm) : 0;
  return { day: last.day, warm, pace, unsure: Math.hypot(WANDERS, WARMTH_DOUBTED * change) };
}

/**
 * Nearly all ferments end all but dry, as surely as the must's non-sugar, the yeast's by-products and the
 * scale are known; one in twenty sticks on the way. A start that was missed is taken for a low one.
 */
function restsFrom(start: number): [Rest, Rest] {
  const dry = dryGravity(Math.max(start, 1.05));
  return [
    { mean: dry + 0.0005, spread: 0.002, odds: 0.95 },
    { mean: dry + 0.025, spread: 0.02, odds: 0.05 },
  ];
}

function dayOf(days: readonly number[]): ForecastDay {
  const { value, low, high } = tenths(days);
  if (value > HORIZON) return { code: 'not-expected' };
  return { code: 'expected', value, low, ...(high > HORIZON ? {} : { high }) };
}

/** What a reading on each day would show: the spread of the courses, and a reading's own, in quadrature. */
function curveOf(beliefs: readonly Belief[], { gravityOn }: Outcomes, from: number) {
  const reading = TENTH * readingUncertainty({ division: 0.001 });
  return Array.from({ length: DAYS_AHEAD + 1 }, (_, ahead) => {
    const day = from + ahead;
    const { value, low, high } = tenths(beliefs.map((belief) => gravityOn(belief, day)));
    return {
      day,
      value,
      low: value - Math.hypot(value - low, reading),
      high: value + Math.hypot(high - value, reading),
    };
  });
}
