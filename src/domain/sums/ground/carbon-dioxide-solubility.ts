import { requireWithin } from './require-within';

const PASCAL_PER_BAR = 1e5;
const KELVIN = 273.15;

/** °C, and a thousand times the mole fraction that water holds at 100 kPa. */
const IN_WATER = [
  [0, 1.337],
  [5, 1.123],
  [10, 0.95],
  [20, 0.704],
  [25, 0.614],
  [30, 0.541],
  [40, 0.431],
] as const;
const IN_WATER_AT_20 = 0.704;

/** Between two rows the logarithm runs straight in 1/T, as van 't Hoff has it. */
function inWater(celsius: number): number {
  const next = Math.max(
    1,
    IN_WATER.findIndex(([t]) => t >= celsius),
  );
  const [below, above] = [IN_WATER[next - 1] ?? IN_WATER[0], IN_WATER[next] ?? IN_WATER[0]];
  const inverse = (t: number) => 1 / (t + KELVIN);
  const share = (inverse(celsius) - inverse(below[0])) / (inverse(above[0]) - inverse(below[0]));
  return below[1] * (above[1] / below[1]) ** share;
}

/** Grams of carbon dioxide that a litre of dry wine takes up per bar of it. */
export function carbonDioxideSolubility(celsius: number, alcohol: number): number {
  requireWithin('wine temperature', celsius, 0, 40);
  requireWithin('alcohol', alcohol, 0, 20);
  return 1.951e-5 * PASCAL_PER_BAR * (0.86 - 0.01 * alcohol) * (inWater(celsius) / IN_WATER_AT_20);
}
