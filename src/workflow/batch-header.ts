import * as v from 'valibot';
import type { Instant } from '../domain/unit';
import type { Facts } from '../procedure/facts';
import { judge } from '../procedure/judge';
import { kitSheetShape, type KitSheet } from '../procedure/kit-sheet';
import { isEnd, isPhase, type Gate, type Phase, type Place } from '../procedure/phase';
import { currentAct } from '../procedure/plan';
import type { Act, StepId } from '../procedure/step';
import { begin, placeOf, type BatchSnapshot } from './replay';

/** The only format and version there is: what the store holds and what a batch file holds are the same. */
export const BATCH_FORMAT = 'fallbright batch';
export const BATCH_VERSION = 1;

/** What a batch is before its first event, and stays for good. The kit sheet is the one it began with. */
export const identityEntries = {
  id: v.pipe(v.string(), v.regex(/^[A-Za-z0-9][A-Za-z0-9-]*$/), v.maxLength(64)),
  /** The maker's own name for it. */
  name: v.pipe(v.string(), v.trim(), v.minLength(1), v.maxLength(80)),
  begun: v.strictObject({
    at: v.pipe(
      v.number(),
      v.integer(),
      v.transform((value) => value as Instant),
    ),
    offsetMinutes: v.pipe(v.number(), v.integer(), v.minValue(-900), v.maxValue(900)),
  }),
  /** The hour of the day at which the maker is usually free. */
  freeHour: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(23)),
  sheet: kitSheetShape,
};

export const batchIdentity = v.strictObject(identityEntries);
export type BatchIdentity = v.InferOutput<typeof batchIdentity>;

/** What a batch waits for: an act and its time, or a gate and when it could open at the earliest. */
export type Next = { act: string; step: StepId; due?: Instant } | { gate: Gate; due?: Instant };

/** A batch without its events: enough for a list of batches, so that none has to be replayed to be shown. */
export type BatchHeader = BatchIdentity & {
  format: typeof BATCH_FORMAT;
  version: typeof BATCH_VERSION;
  /** How many events its journal holds. */
  entries: number;
  place: Place;
  /** Absent once the batch has ended. */
  next?: Next;
  endedAt?: Instant;
};

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
