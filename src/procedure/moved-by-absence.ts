import type { Instant } from '../domain/unit';
import type { Facts } from './facts';
import type { KitSheet } from './kit-sheet';
import { isPhase, type Place } from './phase';
import { currentAct } from './plan';

/** When the next act comes due if a time away is planned; nothing where that does not move it. */
export function movedByAbsence(
  place: Place,
  sheet: KitSheet,
  facts: Facts,
  absence: Facts['away'][number],
): Instant | undefined {
  if (!isPhase(place)) return undefined;
  const then = currentAct(place, sheet, { ...facts, away: [...facts.away, absence] })?.due;
  return then === currentAct(place, sheet, facts)?.due ? undefined : then;
}
