import { requireWithin } from './ground/require-within';
import { SULPHUR_DIOXIDE_FRACTION } from './ground/sulphite';

/** By how much total sulphur dioxide should rise, in how much wine. */
export type SulphiteRise = { rise: number; litres: number };

/**
 * Potassium metabisulphite that raises total sulphur dioxide by a given amount.
 * Units        mg/L as SO₂ and litres in; grams out, unrounded.
 * Range        0–500 mg/L, 0.1–100 L.
 * Uncertainty  fresh powder; of one that is years old it takes up to 5 % more.
 * Errors       RangeError outside the range.
 * Source       stoichiometry, IUPAC atomic masses (2021).
 */
export function metabisulphiteFor({ rise, litres }: SulphiteRise): number {
  requireWithin('rise of sulphur dioxide', rise, 0, 500);
  requireWithin('litres', litres, 0.1, 100);
  return (rise * litres) / 1000 / SULPHUR_DIOXIDE_FRACTION;
}
