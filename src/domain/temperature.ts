import { decimal } from './decimal';
import { accepted, refused, type Result } from './result';
import type { Celsius } from './unit';

/** Which scale the maker's thermometer shows. */
export type TemperatureScale = '°C' | '°F';

const LOWEST_CELSIUS = 0 as Celsius;
export const HIGHEST_CELSIUS = 40 as Celsius;

/** Fahrenheit to Celsius, unrounded. */
const fromFahrenheit = (fahrenheit: number): Celsius => ((fahrenheit - 32) / 1.8) as Celsius;

/** Celsius as the number that the maker's scale shows, unrounded. */
export const onScale = (celsius: Celsius, scale: TemperatureScale): number =>
  scale === '°F' ? celsius * 1.8 + 32 : celsius;

/**
 * A temperature as typed on the maker's scale: of wine, must or sample where no limits are named. Outside them it is
 * refused, never clamped.
 */
export function parseTemperature(
  given: string,
  scale: TemperatureScale,
  lowest = LOWEST_CELSIUS,
  highest = HIGHEST_CELSIUS,
): Result<Celsius> {
  const number = decimal(given);
  const value = (scale === '°F' ? fromFahrenheit(number) : number) as Celsius;
  return value >= lowest && value <= highest
    ? accepted(value)
    : refused({ code: 'temperature-misread', given, scale, lowest, highest });
}
