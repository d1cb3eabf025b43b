import { daysBetween } from '../../domain/calendar';
import { isGate } from '../../procedure/phase';
import type { Bench } from './bench.svelte';
import { dueOf } from './due-of';

/** Nothing falls due here today: an act that waits for its day, or a gate that cannot open before tomorrow. */
export function isWaiting({ act, held, now, place }: Bench): boolean {
  if (isGate(place)) return daysBetween(now, { ...now, at: held?.verdict.earliest ?? now.at }) > 0;
  return act !== undefined && (dueOf(act) ?? now.at) > now.at;
}
