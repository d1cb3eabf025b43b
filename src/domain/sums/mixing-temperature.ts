import { heatAt, heatOf, together, type Warm } from './ground/heat';

/**
 * How warm a batch is when its parts have been stirred together.
 * Units        litres, °C and SG of each part in; °C out.
 * Range        litres 0–100 each and not all none, 0–100 °C, gravity 0.980–1.400.
 * Uncertainty  1 °C: the vessel's own heat, the room and the thermometers are not counted.
 * Errors       RangeError outside the range.
 * Source       heat balance; enthalpy of sucrose solutions after Kadlec (Bubník et al. 1995), as transcribed
 *              in a public research code.
 */
export function mixingTemperature(parts: readonly Warm[]): number {
  const heats = parts.map(heatOf);
  const { linear, square } = together(heats);
  if (!(linear > 0)) throw new RangeError('nothing to mix');
  const heat = parts.reduce(
    (sum, part, index) => sum + heatAt(heats[index] ?? together([]), part.celsius),
    0,
  );
  return (2 * heat) / (linear + Math.sqrt(linear ** 2 + 4 * square * heat));
}
