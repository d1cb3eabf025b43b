import { requireWithin } from './ground/require-within';
import { SULPHUR_DIOXIDE_FRACTION } from './ground/sulphite';

/** Potassium metabisulphite, and the wine that it goes into. */
export type SulphiteAddition = { metabisulphiteGrams: number; litres: number };

/**
 * Total sulphur dioxide that a dose of potassium metabisulphite adds.
 * Units        grams and litres in; mg/L as SO₂ out.
 * Range        0–200 g, 0.1–100 L.
 * Uncertainty  fresh powder; one that is years old gives up to 5 % less.
 * Errors       RangeError outside the range.
 * Source       stoichiometry, IUPAC atomic masses (2021).
 */
export function sulphurDioxideFrom({ metabisulphiteGrams, litres }: SulphiteAddition): number {
  requireWithin('metabisulphite', metabisulphiteGrams, 0, 200);
  requireWithin('litres', litres, 0.1, 100);
  return (metabisulphiteGrams * 1000 * SULPHUR_DIOXIDE_FRACTION) / litres;
}
