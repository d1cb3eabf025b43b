import { accepted, refused, type Result } from './result';

export const MOST_COUNTED = 500;

/** Things counted, as typed: whole and not more than anyone has. */
export function parseCount(given: string): Result<number> {
  const text = given.trim();
  const value = /^\d{1,4}$/.test(text) ? Number(text) : Number.NaN;
  return value <= MOST_COUNTED
    ? accepted(value)
    : refused({ code: 'count-misread', given, highest: MOST_COUNTED });
}
