import type { Instant } from './unit';

/** A moment as the maker's wall clock had it: the offset is local time minus UTC, in minutes. */
export type Moment = { at: Instant; offsetMinutes: number };

export const MINUTE = 60_000;
export const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;

/** A moment some hours later. */
export const hoursAfter = (at: Instant, hours: number): Instant => (at + hours * HOUR) as Instant;

/** Which local calendar day a moment falls on, counted from 1970. */
export const localDay = ({ at, offsetMinutes }: Moment): number =>
  Math.floor((at + offsetMinutes * MINUTE) / DAY);

/** Calendar days from one moment to another: the day of the yeast is day 0, and midnight turns the page. */
export const daysBetween = (from: Moment, to: Moment): number => localDay(to) - localDay(from);

/** The instant at which an hour of the clock comes on the n-th local day after a moment, on that moment's offset. */
export const onDay = (from: Moment, days: number, hour: number): Instant =>
  ((localDay(from) + days) * DAY + hour * HOUR - from.offsetMinutes * MINUTE) as Instant;

/** The first given hour of the clock at or after a moment. */
export function nextFreeHour(moment: Moment, hour: number): Instant {
  const today = onDay(moment, 0, hour);
  return today >= moment.at ? today : onDay(moment, 1, hour);
}
