import { HOUR } from '../../domain/calendar';
import type { Instant } from '../../domain/unit';
import type { BatchHeader } from '../../workflow/batch-header';

/** Whether a batch is late, wants something now, waits for a later time, or is over. A gate is never late. */
export type Urgency = 'late' | 'now' | 'later' | 'ended';

const IN_ORDER: readonly Urgency[] = ['late', 'now', 'later', 'ended'];

/** Due times are "about" an hour of the clock: nobody is late within it. */
const LATE_AFTER = HOUR;

type Waiting = Pick<BatchHeader, 'next' | 'endedAt'>;

export function urgencyOf({ next, endedAt }: Waiting, now: Instant): Urgency {
  if (endedAt !== undefined || !next) return 'ended';
  if (next.due === undefined) return 'now';
  if (next.due > now) return 'later';
  return 'gate' in next || now - next.due < LATE_AFTER ? 'now' : 'late';
}

/** Late ones first, and the longest of them; then what is for now; then what comes, soonest first; then the newest end. */
export const byUrgency =
  (now: Instant) =>
  (a: Waiting, b: Waiting): number =>
    IN_ORDER.indexOf(urgencyOf(a, now)) - IN_ORDER.indexOf(urgencyOf(b, now)) ||
    (a.next?.due ?? 0) - (b.next?.due ?? 0) ||
    (b.endedAt ?? 0) - (a.endedAt ?? 0);
