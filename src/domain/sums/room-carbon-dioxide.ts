import { alcoholFromGravity } from './alcohol-from-gravity';
import { ethanolWaterDensity } from './ethanol-water-density';
import { requireWithin } from './ground/require-within';

const GAS_PER_ALCOHOL = 0.9565;
const LITRES_PER_GRAM = 24.055 / 44.0095;

/** Exposure limits in parts per million: eight hours, a quarter of an hour, dangerous to life at once. */
const LIMITS = { eightHours: 5000, quarterHour: 30_000, dangerous: 40_000 } as const;

/** The batch, its gravity before and after, and the room or chest that it stands in. */
export type Fermenting = { litres: number; start: number; finish: number; roomCubicMetres: number };

/** What the whole ferment gives off, and what that would be in the room's air. */
export type RoomAir = { ppm: number; kilograms: number; litresOfGas: number; limits: typeof LIMITS };

/**
 * Carbon dioxide in a room's air if none of what a ferment gives off ever left it.
 * Units        litres, SG 20/20 and m³ in; ppm by volume, kg and litres (20 °C) out, with the exposure limits
 *              in ppm.
 * Range        0.1–100 L, start 1.000–1.170, finish 0.980–1.170, room 0.1–1000 m³.
 * Uncertainty  an upper bound, not a forecast: it is spread over days, and any draught carries it off. 3 %
 *              for the gas.
 * Errors       RangeError outside the range.
 * Source       Balling's balance, 0.9565 g per g of alcohol (Nielsen et al. 2007); limits from NIOSH,
 *              Documentation for Immediately Dangerous to Life or Health Concentrations (1994).
 */
export function roomCarbonDioxide({ litres, start, finish, roomCubicMetres }: Fermenting): RoomAir {
  requireWithin('litres', litres, 0.1, 100);
  requireWithin('room', roomCubicMetres, 0.1, 1000);
  const alcohol = (alcoholFromGravity({ start, finish }).value / 100) * ethanolWaterDensity(1, 20);
  const grams = GAS_PER_ALCOHOL * alcohol * litres;
  const litresOfGas = grams * LITRES_PER_GRAM;
  const ppm = Math.min((litresOfGas / (roomCubicMetres * 1000)) * 1e6, 1e6);
  return { ppm, kilograms: grams / 1000, litresOfGas, limits: LIMITS };
}
