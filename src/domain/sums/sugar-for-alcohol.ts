import { requireWithin } from './ground/require-within';

const GRAMS_PER_LITRE_AND_PERCENT = 17;

/** The volume with the sugar in it, and by how much its alcohol should rise. */
export type Raise = { litres: number; percent: number };

/**
 * Table sugar that raises the alcohol of a must.
 * Units        litres and % vol in; grams of sucrose out.
 * Range        0.1–100 L, 0–5 % vol; well founded to 3 % vol.
 * Uncertainty  6 %: 16 to 18 g/L make 1 % vol, as the yeast has it.
 * Errors       RangeError outside the range.
 * Source       common practice, 17 g/L for 1 % vol; the EU's 16.83 g/L of hexose (from memory) is 16.0 g of
 *              sucrose.
 */
export function sugarForAlcohol({ litres, percent }: Raise): number {
  requireWithin('litres', litres, 0.1, 100);
  requireWithin('rise of alcohol', percent, 0, 5);
  return GRAMS_PER_LITRE_AND_PERCENT * litres * percent;
}
