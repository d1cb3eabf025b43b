import { HOUR } from '../domain/calendar';
import { relativeDensity } from '../domain/gravity';
import { standing } from '../domain/reading';
import {
  forecastGravity,
  type Forecast,
  type ForecastReading,
  type ForecastTerms,
} from '../domain/sums/forecast-gravity';
import type { Instant } from '../domain/unit';
import { asOneMust } from './as-one-must';
import type { Facts } from './facts';
import type { KitSheet } from './kit-sheet';
import { finishOf, inUse } from './limits';
import { readingsOfFerment, readingsOfMust, sugarToFerment } from './selections';
import { hasYielded } from './yielding';

const DAY = 24 * HOUR;
/** How far the sum reaches: days since the yeast, readings, and gravities. */
const LAST_DAY = 60;
const MOST_READINGS = 60;
const [LIGHTEST, HEAVIEST] = [0.98, 1.17] as const;

/**
 * How this ferment will go on, by its readings so far; the moment of looking does not matter, only what was read. Nothing
 * before the yeast, once dryness is proven, after a ferment that began again or got more sugar, or beyond the sum's reach.
 */
export function forecastFor(sheet: KitSheet, facts: Facts): Forecast | undefined {
  const restarted = facts.returns.some(({ clause }) => clause === 'still-moving') || sugarToFerment(facts);
  if (facts.passed['proving dry'] || restarted) return undefined;
  const readings = readingsFrom(sheet, facts);
  const terms = termsOf(inUse(sheet, facts.leftOut), facts);
  const reaches = (terms.minimumDays ?? 0) <= LAST_DAY && readings.length > 0 && readings.every(isInReach);
  return reaches ? forecastGravity(readings, terms) : undefined;
}

/** The instant of a forecast's day. */
export const instantOf = ({ pitched, begun }: Facts, day: number): Instant =>
  ((pitched ?? begun).at + day * DAY) as Instant;

/** The start on the day of the yeast, and every reading since that stands and that no gas has lifted. */
function readingsFrom(sheet: KitSheet, facts: Facts): ForecastReading[] {
  const { pitched } = facts;
  if (!pitched) return [];
  const since = standing(readingsOfFerment(facts))
    .filter(({ degassed }) => degassed)
    .map((reading) => ({
      day: (reading.takenAt - pitched.at) / DAY,
      gravity: asOneMust(sheet, facts, reading),
      celsius: reading.wine,
    }));
  return [...startOf(sheet, facts), ...since].slice(-MOST_READINGS);
}

function startOf(sheet: KitSheet, facts: Facts): ForecastReading[] {
  const start = standing(readingsOfMust(facts)).at(-1);
  if (!start) return [];
  const warmth = facts.temperatures.findLast(({ at }) => at <= (facts.pitched?.at ?? 0));
  return [{ day: 0, gravity: asOneMust(sheet, facts, start), celsius: warmth?.celsius ?? start.wine }];
}

function termsOf(sheet: KitSheet, facts: Facts): ForecastTerms {
  const { limit, hoursApart, minimumDays, wineAtLeast } = finishOf(sheet);
  return {
    limit: relativeDensity(limit),
    hoursApart,
    minimumDays: hasYielded('proving dry', 'too-soon', facts) ? 0 : minimumDays,
    warmEnough: wineAtLeast,
  };
}

const isInReach = ({ day, gravity }: ForecastReading): boolean =>
  day <= LAST_DAY && gravity >= LIGHTEST && gravity <= HEAVIEST;
