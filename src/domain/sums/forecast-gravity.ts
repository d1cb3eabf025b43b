import { dryGravity } from './ground/dry-gravity';
import { fermentBeliefs, type Belief, type Seen } from './ground/ferment-beliefs';
import { fermentOutcomes, type Outcomes } from './ground/ferment-outcomes';
import { fermentWarnings, type FermentWarning } from './ground/ferment-warnings';
import type { Interval } from './ground/interval';
import { requireWithin } from './ground/require-within';
import { warmDays } from './ground/warm-days';
import { weightedQuantiles } from './ground/weighted-quantile';
import { readingUncertainty } from './reading-uncertainty';

/** A corrected gravity, the wine's own warmth, and how many days after the yeast it was read. */
export type ForecastReading = { day: number; gravity: number; celsius: number };

/** What the gate will ask for; the house's own where left out. `start` where the first reading is not it. */
export type ForecastTerms = {
  limit?: number;
  hoursApart?: number;
  minimumDays?: number;
  warmEnough?: number;
  start?: number;
};

/** A day since the yeast. `high` is absent where more than one outcome in ten never gets there. */
export type ForecastDay =
  | { code: 'reached'; day: number }
  | { code: 'expected'; value: number; low: number; high?: number }
  | { code: 'not-expected' };

/** The days to come, one in ten outcomes above `high` and one in ten below `low`. */
export type Forecast = {
  curve: (Interval & { day: number })[];
  limitReached: ForecastDay;
  gateOpens: ForecastDay;
  warnings: FermentWarning[];
};

const DAYS_AHEAD = 21;
const TENTH = 1.2816;
const HORIZON = 60;

/**
 * How a ferment will go on, from its readings so far.
 * Units        days since pitching, SG 20/20, °C in; days and SG out, as 80 % intervals.
 * Range        1–60 readings on days 0–60, 0.980–1.170, 0–40 °C; limit 0.985–1.010; one must, fermenting once.
 * Uncertainty  it is the interval: courses of ferments weighed by how well each explains the readings, every one in the
 *              warmth that was read and, from the last reading on, in the last one. Before the third reading it is wide.
 * Errors       RangeError outside the range.
 * Source       Richards' curve in temperature-weighted days (Ough & Amerine 1961: log of rate straight in 1/T; Q10 = 2
 *              from memory); what is expected beforehand is our own judgement.
 */
export function forecastGravity(given: readonly ForecastReading[], terms: ForecastTerms = {}): Forecast {
  const { limit = 0.996, hoursApart = 48, minimumDays = 0, warmEnough = 18 } = terms;
  const [first, ...later] = inOrder(given);
  requireWithin('dry limit', limit, 0.985, 1.01);
  const last = later.at(-1) ?? first;
  const warm = warmDays([{ day: 0, celsius: first.celsius }, first, ...later]);
  const seen = ({ day, gravity }: ForecastReading): Seen => ({ warm: warm.until(day), gravity });
  const beliefs = fermentBeliefs([seen(first), ...later.map(seen)], restsFrom(terms.start ?? first.gravity));
  const outcomes = fermentOutcomes(seen(first), warm);
  const dry = dryFrom([first, ...later], limit);
  const reach = beliefs.map((belief) =>
    Math.max(dry?.day ?? last.day, dry ? 0 : outcomes.reaches(belief, limit)),
  );
  const opens = beliefs.map((belief, index) => {
    const from = outcomes.unchangedFrom(belief, reach[index] ?? HORIZON, hoursApart / 24);
    return Math.max(from + hoursApart / 24, minimumDays);
  });
  return {
    curve: curveOf(beliefs, outcomes, last),
    limitReached: dry ? { code: 'reached', day: dry.day } : dayOf(beliefs, reach),
    gateOpens: dayOf(beliefs, opens),
    warnings: fermentWarnings({
      readings: [first, ...later],
      beliefs,
      outcomes,
      warm,
      limit,
      warmEnough,
      dry: Boolean(dry),
    }),
  };
}

function inOrder(given: readonly ForecastReading[]): [ForecastReading, ...ForecastReading[]] {
  requireWithin('number of readings', given.length, 1, 60);
  for (const { day, gravity, celsius } of given) {
    requireWithin('day', day, 0, HORIZON);
    requireWithin('gravity', gravity, 0.98, 1.17);
    requireWithin('wine temperature', celsius, 0, 40);
  }
  return given.toSorted((a, b) => a.day - b.day) as [ForecastReading, ...ForecastReading[]];
}

/** Most ferments end all but dry; some stick on the way. A start that was missed is taken for a middling one. */
function restsFrom(start: number) {
  const dry = dryGravity(Math.max(start, 1.05));
  return [
    { mean: dry + 0.001, spread: 0.002, odds: 0.93 },
    { mean: dry + 0.025, spread: 0.02, odds: 0.07 },
  ];
}

/** The first of the newest readings that are all at or below the limit. */
function dryFrom(readings: readonly ForecastReading[], limit: number): ForecastReading | undefined {
  return readings[readings.findLastIndex(({ gravity }) => gravity > limit) + 1];
}

function dayOf(beliefs: readonly Belief[], days: readonly number[]): ForecastDay {
  const possible = beliefs.map(({ weight }, index) => ({ value: days[index] ?? HORIZON, weight }));
  const [low = HORIZON, value = HORIZON, high = HORIZON] = weightedQuantiles(possible, [0.1, 0.5, 0.9]);
  if (value > HORIZON) return { code: 'not-expected' };
  return { code: 'expected', low, value, ...(high > HORIZON ? {} : { high }) };
}

/** What a reading on that day would show: the courses' spread, and a reading's own in quadrature. */
function curveOf(beliefs: readonly Belief[], outcomes: Outcomes, last: ForecastReading) {
  const reading = TENTH * Math.hypot(2 * readingUncertainty({ division: 0.001 }));
  return Array.from({ length: DAYS_AHEAD + 1 }, (_, ahead) => {
    const day = last.day + ahead;
    const possible = beliefs.map((belief) => ({
      value: outcomes.gravityOn(belief, day),
      weight: belief.weight,
    }));
    const [low = 1, value = 1, high = 1] = weightedQuantiles(possible, [0.1, 0.5, 0.9]);
    return {
      day,
      value,
      low: value - Math.hypot(value - low, reading),
      high: value + Math.hypot(high - value, reading),
    };
  });
}
