import { requireWithin } from './ground/require-within';
import { SORBIC_FRACTION } from './ground/sorbate';

/** mg/L of potassium sorbate: a row for each of 10–14 % vol, a column for each pH of 3.1–3.5. */
const DOSES = [
  [165, 180, 210, 240, 270],
  [135, 150, 180, 210, 225],
  [96, 105, 120, 135, 150],
  [78, 90, 96, 105, 120],
  [60, 66, 72, 81, 90],
];
const [WEAKEST, STRONGEST, SOUREST, MILDEST] = [10, 14, 3.1, 3.5] as const;

/** The most sorbic acid allowed, mg/L: the dose is never asked to exceed the strictest. */
const LIMITS = { OIV: 200, EU: 200, US: 300 } as const;
/** Whose limit it is. */
export type Region = keyof typeof LIMITS;

/** Sorbic acid in the finished wine (mg/L), its strength (% vol) and acidity. */
export type Sorbated = { sorbicAcid: number; alcohol: number; pH: number };

/**
 * Whether it suffices, what would (mg/L), and which regions' limits it is over. Weak or mild wine has no
 * table.
 */
export type SorbateVerdict =
  { code: 'enough' | 'too-little'; needed: number; over: Region[] } | { code: 'no-table'; over: Region[] };

/**
 * Straight between the four cells around a place; strength and acidity beyond the table's strong end need no
 * more.
 */
function doseAt(alcohol: number, pH: number): number {
  const row = Math.min(alcohol, STRONGEST) - WEAKEST;
  const column = (Math.max(pH, SOUREST) - SOUREST) * 10;
  const [top, left] = [Math.min(Math.floor(row), 3), Math.min(Math.floor(column), 3)];
  const cell = (down: number, right: number) => DOSES[top + down]?.[left + right] ?? 0;
  const along = (down: number) => cell(down, 0) + (cell(down, 1) - cell(down, 0)) * (column - left);
  return along(0) + (along(1) - along(0)) * (row - top);
}

/**
 * Is there enough sorbic acid to keep a finished, clear, sulphited wine from starting again?
 * Units        mg/L as sorbic acid, % vol and pH in; mg/L out.
 * Range        0–1000 mg/L, 0–20 % vol, pH 2.8–4.2; the table covers 10 % vol and over at pH 3.5 and under.
 * Uncertainty  an amateur handbook's table, 10–20 %; no official one was found. It holds nothing back in a
 *              wine that still ferments.
 * Errors       RangeError outside the range; `no-table` where the wine is weaker or milder than the table.
 * Source       Underhill, Making Better Wines, sorbate table, capped at 200 mg/L; limits: OIV Code II.3.4.5,
 *              Regulation (EU) 2019/934, 27 CFR 24.246 (the last two from memory).
 */
export function sorbateEnough({ sorbicAcid, alcohol, pH }: Sorbated): SorbateVerdict {
  requireWithin('sorbic acid', sorbicAcid, 0, 1000);
  requireWithin('alcohol', alcohol, 0, 20);
  requireWithin('pH', pH, 2.8, 4.2);
  const over = (Object.keys(LIMITS) as Region[]).filter((region) => sorbicAcid > LIMITS[region]);
  if (alcohol < WEAKEST || pH > MILDEST) return { code: 'no-table', over };
  const needed = Math.min(doseAt(alcohol, pH) * SORBIC_FRACTION, LIMITS.OIV);
  return { code: sorbicAcid >= needed ? 'enough' : 'too-little', needed, over };
}
