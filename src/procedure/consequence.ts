import { relativeDensity, type Division } from '../domain/gravity';
import { standing } from '../domain/reading';
import { alcoholFromGravity } from '../domain/sums/alcohol-from-gravity';
import { bottlePressure } from '../domain/sums/bottle-pressure';
import { carbonDioxideSaturation } from '../domain/sums/carbon-dioxide-saturation';
import type { Interval } from '../domain/sums/ground/interval';
import { sugarLeft } from '../domain/sums/sugar-left';
import { isIn, type Facts } from './facts';
import type { KitSheet } from './kit-sheet';
import { stabilisersOf } from './limits';
import { readingsOfFerment, startGravity } from './selections';

/** What ignoring a shut dryness gate would mean for this batch. Sugar in g/L, pressures in bar over atmosphere. */
export type Consequence = {
  sugar: Interval;
  /** In a corked bottle kept at 20 and at 30 °C, once that sugar has fermented. */
  at20: Interval;
  at30: Interval;
  /** Whether the sugar is more than the sum reaches: then the pressures are at least what they say. */
  orMore: boolean;
  /** What a still-wine bottle is meant to hold at 20 °C. */
  meantFor: number;
  /** Stabiliser sachets of the sheet that would be spent on yeast they cannot stop. */
  wasted: readonly string[];
};

/** OIV's definition of a still wine: at most 0.5 bar over atmosphere at 20 °C. */
const STILL_WINE_BAR = 0.5;
/** Gap under a cork, in ml; common practice. */
const UNDER_THE_CORK_ML = 10;
/** The bottle-pressure sum reaches this far. */
const MOST_SUGAR = 30;

/** From the newest reading and the start; nothing while either is missing. */
export function consequence(sheet: KitSheet, facts: Facts): Consequence | undefined {
  const start = startGravity(sheet, facts);
  const newest = standing(readingsOfFerment(facts)).at(-1);
  if (!start || !newest || start < newest.gravity || start < 10_000) return undefined;
  const from = relativeDensity(start);
  const to = relativeDensity(newest.gravity);
  const sugar = sugarLeft({ start: from, now: to, division: scaleOf(newest.division) });
  const alcohol = alcoholFromGravity({ start: from, finish: to }).value;
  const pressures = (celsius: number): Interval =>
    pressuresOf(sugar, celsius, Math.max(0, alcohol), newest.wine, sheet);
  return {
    sugar,
    at20: pressures(20),
    at30: pressures(30),
    orMore: sugar.high > MOST_SUGAR,
    meantFor: STILL_WINE_BAR,
    wasted: stabilisersOf(sheet)
      .filter(({ id }) => !isIn(facts, id))
      .map(({ printed }) => printed),
  };
}

const scaleOf = (division: Division): number => relativeDensity(division as never);

function pressuresOf(
  sugar: Interval,
  celsius: number,
  alcohol: number,
  wine: number,
  { bottle }: KitSheet,
): Interval {
  const dissolved = carbonDioxideSaturation({ celsius: wine, alcohol, bar: 1.01325 });
  const bar = (grams: number): number =>
    bottlePressure({
      sugar: Math.min(MOST_SUGAR, Math.max(0, grams)),
      celsius,
      headspaceMl: UNDER_THE_CORK_ML,
      bottleMl: bottle.millilitres,
      dissolved,
      alcohol,
    });
  return { value: bar(sugar.value), low: bar(sugar.low), high: bar(sugar.high) };
}
