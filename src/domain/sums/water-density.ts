import { requireWithin } from './ground/require-within';

const [A1, A2, A3, A4, A5] = [-3.983035, 301.797, 522528.9, 69.34881, 999.97495] as const;

/**
 * Density of pure, air-free water at one atmosphere.
 * Units        °C (ITS-90) in; kg/m³ out.
 * Range        0–40 °C.
 * Uncertainty  0.001 kg/m³; tap water is within 0.01 kg/m³ of it, far below a hydrometer's division.
 * Errors       RangeError outside the range.
 * Source       Tanaka et al., Metrologia 38 (2001) 301, equation 1 (constants from memory; they agree with
 *              IAPWS-95 within 0.0011 kg/m³).
 */
export function waterDensity(celsius: number): number {
  requireWithin('water temperature', celsius, 0, 40);
  return A5 * (1 - ((celsius + A1) ** 2 * (celsius + A2)) / (A3 * (celsius + A4)));
}
