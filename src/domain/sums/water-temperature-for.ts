import { heatAt, heatOf, type Warm } from './ground/heat';
import { requireWithin } from './ground/require-within';

const FREEZING = 0;
const SCALDING = 49;

/** What is in the vessel already, how much water is still to come, and how warm the batch should be. */
export type Landing = { parts: readonly Warm[]; waterLitres: number; target: number };

/** How warm the water must be, or why no water will do: `celsius` is what the sum asks for in every case. */
export type WaterTemperature =
  | { code: 'pour'; celsius: number }
  | { code: 'scalding'; celsius: number; limit: number }
  | { code: 'impossible'; celsius: number; lowest: number; highest: number };

/**
 * How warm the last water must be so that the batch lands at pitching warmth.
 * Units        litres, °C and SG of each part, litres of water, °C wanted in; °C out.
 * Range        litres 0–100 each, water 0.1–100 L, 0–100 °C, target 5–40 °C.
 * Uncertainty  the batch lands within 1 °C of the target: the vessel's own heat and the room are not counted.
 * Errors       RangeError outside the range. Water below 0 °C or above 100 °C is impossible; above 49 °C (120
 *              °F) it scalds a hand and cracks glass.
 * Source       heat balance, as in `mixingTemperature`; the scalding limit is that of the US Consumer Product
 *              Safety Commission's voluntary standard, quoted by a valve maker.
 */
export function waterTemperatureFor({ parts, waterLitres, target }: Landing): WaterTemperature {
  requireWithin('water', waterLitres, 0.1, 100);
  requireWithin('target temperature', target, 5, 40);
  const missing = parts.reduce((sum, part) => {
    const heat = heatOf(part);
    return sum + heatAt(heat, target) - heatAt(heat, part.celsius);
  }, 0);
  const celsius = target + missing / heatOf({ litres: waterLitres, celsius: target }).linear;
  if (celsius < FREEZING || celsius > 100)
    return { code: 'impossible', celsius, lowest: FREEZING, highest: 100 };
  return celsius > SCALDING ? { code: 'scalding', celsius, limit: SCALDING } : { code: 'pour', celsius };
}
