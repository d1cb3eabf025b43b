import { HOUR } from '../../domain/calendar';
import type { Instant } from '../../domain/unit';
import type { BatchHeader } from '../../workflow/batch-header';

/** Whether a batch is late, wants something now, waits for a later time, or is over. A gate is never late. */
export type Urgency = 'late' | 'now' | 'later' | 'ended';

const IN_ORDER: readonly Urgency[] = ['late', 'now', 'later', 'ended'];

/** Due times are "about" an hour of the clock: nobody is late within it. */
const LATE_AFTER = HOUR;

/** `look` is when a mishap wants another look, the soonest. Nobody is late for it. */
type Waiting = Pick<BatchHeader, 'next' | 'endedAt'> & { look?: Instant | undefined };

export function urgencyOf({ next, endedAt }: Waiting, now: Instant): Urgency {
  if (endedAt !== undefined || !next) return 'ended';
  if (next.due === undefined) return 'now';
  if (next.due > now) return 'later';
  return 'gate' in next || now - next.due < LATE_AFTER ? 'now' : 'late';
}

const isDue = ({ look }: Waiting, now: Instant): boolean => look !== undefined && look <= now;

/** The urgency of whatever a batch wants first: its next act, or another look. */
const foremost = (batch: Waiting, now: Instant): Urgency => {
  const next = urgencyOf(batch, now);
  return next === 'later' && isDue(batch, now) ? 'now' : next;
};

const firstDue = ({ next, look = Infinity as Instant }: Waiting): number => Math.min(next?.due ?? 0, look);

/** Late ones first, and the longest of them; then what is for now; then what comes, soonest first; then the newest end. */
export const byUrgency =
  (now: Instant) =>
  (a: Waiting, b: Waiting): number =>
    IN_ORDER.indexOf(foremost(a, now)) - IN_ORDER.indexOf(foremost(b, now)) ||
    firstDue(a) - firstDue(b) ||
    (b.endedAt ?? 0) - (a.endedAt ?? 0);
