import type { Problem } from '../domain/problem';
import type { Facts } from '../procedure/facts';
import type { KitSheet } from '../procedure/kit-sheet';
import { isPhase, type Place } from '../procedure/phase';
import { currentAct } from '../procedure/plan';
import type { Act } from '../procedure/step';
import type { EventOf, EventType } from './batch-event';

/** Where the batch stands when an event comes, looked at from the event's moment. */
export type Standing = { sheet: KitSheet; facts: Facts; place: Place };

/** Why events of one type are not taken, for every type that has more to ask than the act and the time. */
export type Refusals = {
  [Type in EventType]?: (then: Standing, event: EventOf<Type>) => Problem | undefined;
};

/** The act that waits for an answer. */
export const actOf = ({ sheet, facts, place }: Standing): Act | undefined =>
  isPhase(place) ? currentAct(place, sheet, facts) : undefined;
