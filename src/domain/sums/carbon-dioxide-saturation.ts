import { carbonDioxideSolubility } from './ground/carbon-dioxide-solubility';
import { requireWithin } from './ground/require-within';

/**
 * The wine's warmth and strength, and the absolute pressure of carbon dioxide over it (1.013 under an
 * airlock).
 */
export type Gassed = { celsius: number; alcohol: number; bar: number };

/**
 * Carbon dioxide that wine holds when it is at rest with the gas over it.
 * Units        °C, % vol and bar absolute in; g/L out.
 * Range        0–40 °C, 0–20 % vol, 0–10 bar.
 * Uncertainty  3 % at 20 °C, 4 % elsewhere.
 * Errors       RangeError outside the range.
 * Source       OIV-MA-AS314-01 at 20 °C, with the CRC Handbook's ratio (p. 8-90) for other temperatures.
 */
export function carbonDioxideSaturation({ celsius, alcohol, bar }: Gassed): number {
  requireWithin('carbon dioxide pressure', bar, 0, 10);
  return carbonDioxideSolubility(celsius, alcohol) * bar;
}
