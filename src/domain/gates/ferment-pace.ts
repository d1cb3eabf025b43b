import { HOUR, type Moment } from '../calendar';
import type { Gravity } from '../gravity';
import { resolutionOf, standing, type Reading } from '../reading';
import type { Celsius } from '../unit';
import type { Finish } from './finish';

/** How a ferment is going, told from its readings and their temperatures. Facts only: the ladder is in `text/`. */
export type Pace =
  | { code: 'unread' }
  | { code: 'dry' }
  | { code: 'going'; perDay: Gravity }
  | { code: 'slow'; perDay: Gravity }
  | { code: 'stuck'; hours: number; fall: Gravity }
  | { code: 'cold'; wine: Celsius; atLeast: Celsius }
  | { code: 'misread'; by: Gravity };

const STUCK_WITHIN_HOURS = 72;
const STUCK_BELOW = 10;
/** A warm ferment that falls by less than 0.002 a day is slow; common practice. */
const SLOW_BELOW = 20;

/**
 * Stuck, slow, cold or misread? A rise beyond the scale is a misreading, whatever else; cold wine only pauses; stuck is
 * less than 0.001 in three days in warm wine above the limit.
 */
export function fermentPace(readings: readonly Reading[], finish: Finish, now: Moment): Pace {
  const taken = standing(readings);
  const newest = taken.at(-1);
  const previous = taken.at(-2);
  if (!newest) return { code: 'unread' };
  if (previous && newest.gravity - previous.gravity > resolutionOf([previous, newest]))
    return { code: 'misread', by: (newest.gravity - previous.gravity) as Gravity };
  if (newest.gravity <= finish.limit) return { code: 'dry' };
  if (newest.wine < finish.wineAtLeast)
    return { code: 'cold', wine: newest.wine, atLeast: finish.wineAtLeast };
  return stuck(taken, finish, now) ?? going(taken);
}

/** Warm and above the limit for three days, and next to nothing gone. */
function stuck(taken: readonly Reading[], finish: Finish, now: Moment): Pace | undefined {
  const newest = taken.at(-1);
  const before = taken.findLast(
    (reading) => newest && newest.takenAt - reading.takenAt >= STUCK_WITHIN_HOURS * HOUR,
  );
  if (!newest || !before) return undefined;
  const since = taken.filter(({ takenAt }) => takenAt >= before.takenAt);
  const fall = before.gravity - newest.gravity;
  const warm = since.every(({ wine }) => wine >= finish.wineAtLeast);
  return warm && fall < STUCK_BELOW
    ? { code: 'stuck', hours: (now.at - before.takenAt) / HOUR, fall: fall as Gravity }
    : undefined;
}

/** How fast it fell between its last two readings. */
function going(taken: readonly Reading[]): Pace {
  const [previous, newest] = [taken.at(-2), taken.at(-1)];
  if (!previous || !newest) return { code: 'going', perDay: 0 as Gravity };
  const days = Math.max(0.25, (newest.takenAt - previous.takenAt) / (24 * HOUR));
  const perDay = Math.round((previous.gravity - newest.gravity) / days) as Gravity;
  return { code: perDay < SLOW_BELOW ? 'slow' : 'going', perDay };
}
