import { decimal } from './decimal';
import { accepted, refused, type Result } from './result';

/** A bare number as typed, within the limits that make sense where it is asked. Outside them it is refused. */
export function parseWithin(given: string, lowest: number, highest: number): Result<number> {
  const value = decimal(given);
  return value >= lowest && value <= highest
    ? accepted(value)
    : refused({ code: 'number-misread', given, lowest, highest });
}
