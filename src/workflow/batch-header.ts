import * as v from 'valibot';
import type { Instant } from '../domain/unit';
import { kitSheetShape } from '../procedure/kit-sheet';
import type { Gate, Place } from '../procedure/phase';
import type { StepId } from '../procedure/step';

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
