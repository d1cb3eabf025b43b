import { MINUTE, type Moment } from '../../domain/calendar';
import type { Instant } from '../../domain/unit';

/** A time away, from the first day to the day of return. */
export type Absence = { from: Instant; until: Instant };

/**
 * A time away as the device's own fields write its days, on the wall clock of now: from the morning of leaving (or now,
 * if that is today) to the morning of return, so that what falls due on that day keeps its hour. Nothing until both are chosen.
 */
export function absence(leaving: string, back: string, now: Moment): Absence | undefined {
  const [from, until] = [leaving, back].map(
    (day) => Date.parse(`${day}T00:00Z`) - now.offsetMinutes * MINUTE,
  );
  if (from === undefined || until === undefined || Number.isNaN(from) || Number.isNaN(until))
    return undefined;
  return { from: Math.max(from, now.at) as Instant, until: until as Instant };
}

/** The day of a moment as those fields write it. */
export const dayIn = ({ at, offsetMinutes }: Moment): string =>
  new Date(at + offsetMinutes * MINUTE).toISOString().slice(0, 10);
