import { atTwenty } from './ground/at-twenty';
import { requireWithin } from './ground/require-within';
import { waterDensity } from './water-density';

/** Cubic expansion of soda-lime glass, per kelvin: a warm hydrometer is larger and floats higher. */
const GLASS = 25e-6;

/**
 * What the hydrometer showed, in what warmth, and the temperature printed on it (15.56 °C is 60 °F). The
 * batch's corrected start gravity, where it is known, says how much of the liquid is alcohol by now.
 */
export type HydrometerReading = {
  reading: number;
  celsius: number;
  calibratedAt: 20 | 15.56;
  start?: number;
};

/**
 * The gravity that water, must or wine would show at 20 °C on a 20/20 instrument.
 * Units        SG read and °C in; SG 20/20 out, unrounded.
 * Range        reading 0.970–1.180, 0–40 °C, start 1.020–1.170; outside 10–30 °C read again nearer to 20 °C.
 * Uncertainty  0.0002 for water, must, and any wine whose start is given, 0.0003 for finished wine of 10–13 %
 *              vol, at 10–30 °C. Without a start, wine at 0.997–1.020 is off by up to 0.0004 at 15 and 25 °C
 *              and 0.0008 at 10 and 30 °C, since one number cannot tell young wine from thin must. A thermometer
 *              off by 1 °C adds 0.00025 near 20 °C and 0.0004 near 30 °C.
 * Errors       RangeError outside the range.
 * Source       buoyancy with glass of 25e-6/K (ISO 649, from memory) on Tanaka 2001 for water, ICUMSA SPS-4
 *              for must and OIML R 22 for alcohol, joined by Tabarié's relation (OIV-MA-AS2-03, from memory).
 */
export function correctHydrometer({ reading, celsius, calibratedAt, start }: HydrometerReading): number {
  requireWithin('hydrometer reading', reading, 0.97, 1.18);
  requireWithin('sample temperature', celsius, 0, 40);
  if (start !== undefined) requireWithin('start gravity', start, 1.02, 1.17);
  const glass = 1 + GLASS * (celsius - calibratedAt);
  const relative = (reading * waterDensity(calibratedAt)) / (waterDensity(celsius) * glass);
  return atTwenty(relative, celsius, start);
}
