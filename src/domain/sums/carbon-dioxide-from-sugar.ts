import { requireWithin } from './ground/require-within';

/** 2 × 44.0095 g of CO₂ from 180.156 g of glucose or fructose. */
const GAS_FROM_SUGAR = (2 * 44.0095) / 180.156;

/**
 * Carbon dioxide given off when sugar ferments to the end.
 * Units        g/L of glucose and fructose in; g/L of wine out.
 * Range        0–400 g/L.
 * Uncertainty  an upper bound: yeast keeps about 5 % of the sugar for itself.
 * Errors       RangeError outside the range.
 * Source       C₆H₁₂O₆ → 2 C₂H₅OH + 2 CO₂, IUPAC atomic masses (2021).
 */
export function carbonDioxideFromSugar(gramsPerLitre: number): number {
  requireWithin('sugar', gramsPerLitre, 0, 400);
  return gramsPerLitre * GAS_FROM_SUGAR;
}
