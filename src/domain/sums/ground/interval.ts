/** A value and the range that holds the truth 19 times in 20, unless its sum says otherwise; all in one unit. */
export type Interval = { value: number; low: number; high: number };

/** A value, give or take; nothing that a sum measures can be less than none. */
export const giveOrTake = (value: number, by: number): Interval => ({
  value: Math.max(0, value),
  low: Math.max(0, value - by),
  high: Math.max(0, value + by),
});
