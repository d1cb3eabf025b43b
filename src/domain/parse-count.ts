import { accepted, refused, type Result } from '../../domain/result';

const MOST = 500;

/** Things counted, as typed: whole and not more than anyone has. */
export function parseCount(given: string): Result<number> {
  const text = given.trim();
  const value = /^\d{1,4}$/.test(text) ? Number(text) : Number.NaN;
  return value <= MOST ? accepted(value) : refused({ code: 'count-misread', given, highest: MOST });
}
