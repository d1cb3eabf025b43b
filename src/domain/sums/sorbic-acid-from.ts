import { requireWithin } from './ground/require-within';
import { SORBIC_FRACTION } from './ground/sorbate';

/** Potassium sorbate, and the wine that it goes into, pack included. */
export type SorbateAddition = { sorbateGrams: number; litres: number };

/**
 * Sorbic acid that a dose of potassium sorbate brings.
 * Units        grams and litres in; mg/L as sorbic acid out.
 * Range        0–100 g, 0.1–100 L.
 * Uncertainty  2 %: the salt is 98–100 % pure.
 * Errors       RangeError outside the range.
 * Source       stoichiometry, IUPAC atomic masses (2021).
 */
export function sorbicAcidFrom({ sorbateGrams, litres }: SorbateAddition): number {
  requireWithin('sorbate', sorbateGrams, 0, 100);
  requireWithin('litres', litres, 0.1, 100);
  return (sorbateGrams * 1000 * SORBIC_FRACTION) / litres;
}
