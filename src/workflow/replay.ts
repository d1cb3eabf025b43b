import { initialTransition, transition, type SnapshotFrom } from 'xstate';
import type { Problem } from '../domain/problem';
import type { Place } from '../procedure/phase';
import type { BatchEvent } from './batch-event';
import { batchMachine, type BatchInput } from './batch-machine';
import { refusal } from './refusal';

export type BatchSnapshot = SnapshotFrom<typeof batchMachine>;

/** Where a snapshot stands. */
export const placeOf = ({ value }: BatchSnapshot): Place => value;

/** A batch before its first event. */
export const begin = (input: BatchInput): BatchSnapshot => initialTransition(batchMachine, input)[0];

/** A batch after one more event: the reason when it does not take it, and never a silent nothing. */
export function step(
  snapshot: BatchSnapshot,
  event: BatchEvent,
): { snapshot: BatchSnapshot } | { problem: Problem } {
  if (snapshot.can(event)) return { snapshot: transition(batchMachine, snapshot, event)[0] };
  const { sheet, facts } = snapshot.context;
  return { problem: refusal({ sheet, facts, place: placeOf(snapshot) }, event) ?? { code: 'not-this-act' } };
}

/** A journal read back: the batch as it stands, or as far as it goes and what does not follow there. */
export type Replayed = { snapshot: BatchSnapshot; mismatch?: Problem };

/** Every event in its order through the pure machine. It stops at the first that does not follow; it never skips. */
export function replay(input: BatchInput, events: readonly BatchEvent[]): Replayed {
  let snapshot = begin(input);
  for (const [index, event] of events.entries()) {
    const next = step(snapshot, event);
    if ('problem' in next)
      return {
        snapshot,
        mismatch: { code: 'journal-mismatch', entry: index + 1, type: event.type, reason: next.problem },
      };
    snapshot = next.snapshot;
  }
  return { snapshot };
}
