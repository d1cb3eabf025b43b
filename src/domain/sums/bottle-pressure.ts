import { carbonDioxideFromSugar } from './carbon-dioxide-from-sugar';
import { carbonDioxideSolubility } from './ground/carbon-dioxide-solubility';
import { requireWithin } from './ground/require-within';

const ATMOSPHERE_BAR = 1.01325;
const GAS_CONSTANT = 8.314462;
const GAS_MOLAR_MASS = 44.0095;
const KELVIN = 273.15;
/** What yeast leaves of the theoretical gas. */
const YIELD = 0.95;

/**
 * Sugar left and gas dissolved at bottling, in g/L; the warmth it will be kept in; the wine and the gap above
 * it.
 */
export type Bottled = {
  sugar: number;
  celsius: number;
  headspaceMl: number;
  bottleMl: number;
  dissolved: number;
  alcohol?: number;
};

/**
 * Pressure in a closed bottle once the sugar left in it has fermented.
 * Units        g/L (glucose and fructose), °C, ml of gap, ml of wine, g/L of carbon dioxide, % vol in; bar
 *              over one atmosphere out, negative where the wine would draw gas in.
 * Range        sugar 0–30 g/L, 0–40 °C, gap 0–200 ml, bottle 100–5000 ml, dissolved 0–5 g/L, 0–20 % vol.
 * Uncertainty  5 %; air trapped under the cork adds 0.2–1 bar that is not counted.
 * Errors       RangeError outside the range.
 * Source       gas balance of wine and gap: OIV-MA-AS314-01, CRC Handbook p. 8-90, ideal gas.
 */
export function bottlePressure(bottled: Bottled): number {
  const { sugar, celsius, headspaceMl, bottleMl, dissolved, alcohol = 12 } = bottled;
  requireWithin('sugar', sugar, 0, 30);
  requireWithin('headspace', headspaceMl, 0, 200);
  requireWithin('bottle', bottleMl, 100, 5000);
  requireWithin('dissolved carbon dioxide', dissolved, 0, 5);
  const inGap = (GAS_MOLAR_MASS * 1e5) / (GAS_CONSTANT * (celsius + KELVIN)) / 1000;
  const gas = (dissolved + YIELD * carbonDioxideFromSugar(sugar)) * bottleMl;
  const perBar = carbonDioxideSolubility(celsius, alcohol) * bottleMl + inGap * headspaceMl;
  return gas / perBar - ATMOSPHERE_BAR;
}
