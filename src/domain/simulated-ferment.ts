import { randomFrom } from './random-from';
import { brixFromGravity } from './sums/brix-from-gravity';
import { tabarie } from './sums/ground/tabarie';

/**
 * What becomes of a simulated batch. Cold: its room is let go cold. Stuck: its yeast dies with sugar left.
 */
export type FermentKind = 'sound' | 'slow' | 'cold' | 'stuck';

/** An hour of it: days since pitching, SG 20/20, °C of the wine, g/L of sugar left. */
export type FermentHour = { day: number; gravity: number; celsius: number; sugar: number };

const HOURS_A_DAY = 24;
const WATER = 998.2;
const ALCOHOL_FROM_SUGAR = 0.47;
const YEAST_PITCHED = 0.25;
const YEAST_PER_NUTRIENT = 0.016;
/** Per day at 22 °C. */
const GROWTH = 2.6;
const DEATH = 0.015;
/** g/L at which growth or uptake runs at half speed. */
const NUTRIENT_HALF = 15;
const SUGAR_HALF = 9;

type Must = {
  sugar: number;
  extract: number;
  byProducts: number;
  nutrient: number;
  appetite: number;
  tolerance: number;
};
type Fate = { must: Must; celsiusOn: (day: number) => number; diesAtSugar: number };

/**
 * A ferment to rehearse or to test with, hour by hour from a seed: yeast grows while there is nutrient, eats
 * while there is sugar, and tires of alcohol. Its form is that of nitrogen-limited growth (Coleman et al.
 * 2007); its numbers are our own.
 */
export function simulatedFerment(kind: FermentKind, seed: number, start = 1.085, days = 30): FermentHour[] {
  const fate = fateOf(kind, randomFrom(seed), start);
  const hours: FermentHour[] = [];
  let yeast = YEAST_PITCHED;
  let { nutrient, sugar } = fate.must;
  for (let hour = 0; hour <= days * HOURS_A_DAY; hour++) {
    const day = hour / HOURS_A_DAY;
    const celsius = fate.celsiusOn(day);
    hours.push({ day, celsius, sugar, gravity: gravityOf(fate.must, sugar) });
    const pace = paceAt(celsius) / HOURS_A_DAY;
    const bearing = Math.max(0, 1 - (ALCOHOL_FROM_SUGAR * (fate.must.sugar - sugar)) / fate.must.tolerance);
    const grown = (GROWTH * pace * bearing * yeast * nutrient) / (nutrient + NUTRIENT_HALF);
    const eaten = (fate.must.appetite * pace * bearing * yeast * sugar) / (sugar + SUGAR_HALF);
    const dying = sugar < fate.diesAtSugar ? 2 / HOURS_A_DAY : DEATH * pace;
    yeast += grown - dying * yeast;
    nutrient = Math.max(0, nutrient - grown / YEAST_PER_NUTRIENT);
    sugar = Math.max(0, sugar - eaten);
  }
  return hours;
}

/**
 * Arrhenius over the range that wine ferments in: a little over twice as fast ten degrees warmer; numb below
 * 9 °C.
 */
const paceAt = (celsius: number): number =>
  Math.exp(6800 * (1 / 295.15 - 1 / (celsius + 273.15))) / (1 + Math.exp(9 - celsius));

function fateOf(kind: FermentKind, random: () => number, start: number): Fate {
  const between = (low: number, high: number) => low + (high - low) * random();
  const extract = (brixFromGravity(start) / 100) * start * WATER;
  const slow = kind === 'slow';
  const must = {
    sugar: extract * (1 - between(0.055, 0.091)),
    extract,
    byProducts: between(0.015, 0.03),
    nutrient: slow ? between(55, 80) : between(90, 190),
    appetite: slow ? between(22, 28) : between(26, 38),
    tolerance: between(122, 140),
  };
  const room = slow ? between(17.5, 19.5) : between(20, 24);
  const swing = between(0.2, 0.8);
  const chilledFrom = kind === 'cold' ? between(1.5, 4) : Number.POSITIVE_INFINITY;
  const chilled = between(8.5, 12.5);
  const celsiusOn = (day: number) => {
    const left = day < chilledFrom ? 1 : Math.exp(chilledFrom - day);
    return chilled + (room - chilled) * left + swing * Math.sin(2 * Math.PI * day);
  };
  return { must, celsiusOn, diesAtSugar: kind === 'stuck' ? between(18, 70) : 0 };
}

/**
 * The gravity of what is left, from its alcohol and extract: not by Balling, so that the sums can be tried on
 * it.
 */
function gravityOf(must: Must, sugar: number): number {
  const eaten = must.sugar - sugar;
  const extract = must.extract - eaten + must.byProducts * eaten;
  let gravity = 1.03;
  for (let round = 0; round < 5; round++) {
    const litre = gravity * WATER;
    gravity = tabarie({ alcohol: (ALCOHOL_FROM_SUGAR * eaten) / litre, extract: extract / litre }, 20);
  }
  return gravity;
}
