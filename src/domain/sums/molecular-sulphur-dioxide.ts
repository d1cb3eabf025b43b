import type { Interval } from './ground/interval';
import { requireWithin } from './ground/require-within';

/**
 * The customary constant: sulphurous acid in water at 20 °C. It asks for more sulphite than wine's own would.
 */
const CUSTOMARY = 1.81;
/** The OIV's constant at 20 °C and the ionic strength of wine, at 0, 5, 10, 15 and 20 % vol. */
const IN_WINE = [1.723, 1.819, 1.916, 2.014, 2.114];
const STEP = 5;

function constantInWine(alcohol: number): number {
  const place = Math.min(Math.floor(alcohol / STEP), IN_WINE.length - 2);
  const [below, above] = [IN_WINE[place] ?? CUSTOMARY, IN_WINE[place + 1] ?? CUSTOMARY];
  return below + ((above - below) * (alcohol - place * STEP)) / STEP;
}

/** Free sulphur dioxide of a wine, its acidity, and its strength (12 % vol unless given). */
export type FreeSulphur = { free: number; pH: number; alcohol?: number };

/**
 * The share of free sulphur dioxide that keeps microbes down.
 * Units        mg/L as SO₂, pH, % vol in; mg/L out.
 * Range        free 0–500 mg/L, pH 2.8–4.2, 0–20 % vol, at 20 °C.
 * Uncertainty  the range is the doubt about the constant: `value` by pK 1.81, the other end by the OIV's for
 *              this strength, a factor of 1.4 at 12 % vol. Warmth adds more; in reds, pigment holds part of
 *              the "free".
 * Errors       RangeError outside the range.
 * Source       Enology Briefs I(1), University of California Cooperative Extension (1982), pK 1.81;
 *              OIV-MA-AS323-04C, table II (from memory, consistent with its table I).
 */
export function molecularSulphurDioxide({ free, pH, alcohol = 12 }: FreeSulphur): Interval {
  requireWithin('free sulphur dioxide', free, 0, 500);
  requireWithin('pH', pH, 2.8, 4.2);
  requireWithin('alcohol', alcohol, 0, 20);
  const by = (constant: number) => free / (1 + 10 ** (pH - constant));
  const value = by(CUSTOMARY);
  const other = by(constantInWine(alcohol));
  return { value, low: Math.min(value, other), high: Math.max(value, other) };
}
