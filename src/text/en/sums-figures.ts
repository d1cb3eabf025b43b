import { asGravity } from '../../domain/gravity';
import type { Interval } from '../../domain/sums/ground/interval';
import type { Instant } from '../../domain/unit';
import type { Formats } from '../formats';

/** A day of a forecast as the maker's calendar has it. */
export type OnDay = { day: number; at: Instant };
export type Expected = { value: OnDay; low: OnDay; high?: OnDay | undefined };

/** "about 12.1 % vol, give or take 0.4"; "at most 0.4 % vol" where it may be none. */
export function about({ value, low, high }: Interval, unit: string, decimals: number, f: Formats): string {
  if (low <= 0) return `at most ${f.number(high, decimals)} ${unit}`;
  return `about ${f.number(value, decimals)} ${unit}, give or take ${f.number(Math.max(high - value, value - low), decimals)}`;
}

export const gravity = (value: number, f: Formats): string => f.gravity(asGravity(value));

/** Ten-thousandths that no hydrometer shows are left out. */
export const thousandths = (value: number, f: Formats): string =>
  f.gravity(asGravity(Math.round(value * 1000) / 1000));

export const onDay = ({ day, at }: OnDay, f: Formats): string => `${f.dayNumber(day)} (${f.date(at)})`;

export const when = ({ value, low, high }: Expected, f: Formats): string =>
  high === undefined
    ? `perhaps ${onDay(value, f)}. Not before ${onDay(low, f)} nine times in ten; how late, these readings cannot tell yet`
    : low.day === high.day
      ? `${onDay(value, f)}, four times in five`
      : `about ${onDay(value, f)}: four times in five from ${onDay(low, f)} to ${onDay(high, f)}`;
