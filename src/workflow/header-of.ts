import type { Instant } from '../domain/unit';
import type { Facts } from '../procedure/facts';
import { judge } from '../procedure/judge';
import type { KitSheet } from '../procedure/kit-sheet';
import { isEnd, isPhase, type Gate, type Phase } from '../procedure/phase';
import { currentAct } from '../procedure/plan';
import type { Act } from '../procedure/step';
import { BATCH_FORMAT, BATCH_VERSION, type BatchHeader, type BatchIdentity, type Next } from './batch-header';
import { begin, placeOf, type BatchSnapshot } from './replay';

/** The header of a batch where it stands now. Everything but the identity follows from the journal. */
export function headerOf(identity: BatchIdentity, snapshot: BatchSnapshot): BatchHeader {
  const { id, name, begun, freeHour, sheet } = identity;
  const { facts } = snapshot.context;
  const place = placeOf(snapshot);
  const standing = isEnd(place) ? { endedAt: facts.now.at } : nextAt(place, sheet, facts);
  return {
    ...{ format: BATCH_FORMAT, version: BATCH_VERSION, id, name, begun, freeHour, sheet },
    ...{ entries: facts.entries, place, ...standing },
  };
}

/** The header of a batch in which nothing has happened yet. */
export const firstHeader = (identity: BatchIdentity): BatchHeader => headerOf(identity, begin(identity));

function nextAt(place: Phase | Gate, sheet: KitSheet, facts: Facts): { next?: Next } {
  if (!isPhase(place)) return { next: { gate: place, ...dueAt(earliestPass(place, sheet, facts)) } };
  const act = currentAct(place, sheet, facts);
  return act ? { next: { act: act.id, step: act.step, ...dueAt(dueOf(act, facts)) } } : {};
}

const dueAt = (due: Instant | undefined): { due?: Instant } => (due === undefined ? {} : { due });

function earliestPass(gate: Gate, sheet: KitSheet, facts: Facts): Instant | undefined {
  const verdict = judge(gate, sheet, facts);
  return verdict.open ? undefined : verdict.earliest;
}

/** A clock that runs is a deadline; else the act's own day, where it has one. */
function dueOf(act: Act, { clocks }: Facts): Instant | undefined {
  const clock = clocks[act.id];
  if (clock?.running) return clock.endsAt;
  return act.kind === 'wait' ? act.until : act.due;
}
