import { MINUTE, type Moment } from './calendar';
import { accepted, refused, type Result } from './result';
import type { Instant } from './unit';

/**
 * A local date and time as a device's own field writes it, on the wall clock of `now`.
 *
 * Units: milliseconds since 1970 UTC. Range: nothing later than now; an empty text is no time at all.
 * Errors: `time-misread` for what is no time, `in-the-future` for what has not come yet.
 */
export function parseLocalTime(given: string, now: Moment): Result<Instant | undefined> {
  if (given === '') return accepted(undefined);
  const takenAt = (Date.parse(`${given}Z`) - now.offsetMinutes * MINUTE) as Instant;
  if (Number.isNaN(takenAt)) return refused({ code: 'time-misread', given });
  return takenAt > now.at ? refused({ code: 'in-the-future', takenAt }) : accepted(takenAt);
}
