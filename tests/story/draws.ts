const byNight = process.env['NIGHTLY'] === '1';
const SEED = 20;

/** A busy machine is no failure: the count of cases is what is fixed. */
export const PATIENCE = 3_600_000;

/**
 * How many cases a property is asked for, and which: by day the same ones each time, so that what is green stays green;
 * by night new ones, and more of them. Asked again, it says how many cases it had already, and gets others.
 */
export const draws = (day: number, night: number, already = 0): { numRuns: number; seed?: number } =>
  byNight ? { numRuns: night } : { numRuns: day, seed: SEED + already };
