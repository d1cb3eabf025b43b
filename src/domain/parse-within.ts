import { decimal } from './decimal';
import { accepted, refused, type Result } from './result';

/** What a number that has no parser of its own may count. */
export type Counting =
  'pH' | 'percent' | 'grams' | 'milligrams per litre' | 'millimetres' | 'brix' | 'gravity';

/** A number as typed, within the limits that make sense where it is asked. Outside them it is refused. */
export function parseWithin(
  given: string,
  counting: Counting,
  lowest: number,
  highest: number,
): Result<number> {
  const value = decimal(given);
  return value >= lowest && value <= highest
    ? accepted(value)
    : refused({ code: 'number-misread', given, counting, lowest, highest });
}
