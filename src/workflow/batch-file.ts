import * as v from 'valibot';
import { accepted, refused, type Result } from '../domain/result';
import { parseKitSheet } from '../procedure/parse-kit-sheet';
import { batchEvent, type BatchEvent } from './batch-event';
import {
  BATCH_FORMAT,
  BATCH_VERSION,
  identityEntries,
  type BatchHeader,
  type BatchIdentity,
} from './batch-header';
import { headerOf } from './header-of';
import { firstFault } from './first-fault';
import { replay } from './replay';

/** A batch as a file, version 1: what it is, and its events in their order. Everything else follows from these. */
export const batchFileShape = v.strictObject({
  format: v.literal(BATCH_FORMAT),
  version: v.literal(BATCH_VERSION),
  ...identityEntries,
  events: v.pipe(v.array(batchEvent), v.maxLength(20_000)),
});

/** A batch that came through the door: its shape is right, its sheet is sound, and every event follows. */
export type ReadBatch = { header: BatchHeader; events: readonly BatchEvent[] };

/** The file of a batch. The order of the keys is the shape's, so that the same batch always makes the same file. */
export function writeBatchFile(
  { id, name, begun, freeHour, sheet }: BatchIdentity,
  events: readonly BatchEvent[],
): string {
  const file = { format: BATCH_FORMAT, version: BATCH_VERSION, id, name, begun, freeHour, sheet, events };
  return `${JSON.stringify(v.parse(batchFileShape, file), null, 2)}\n`;
}

/** The batch in a file's text, or what is wrong with it. Imports are judged again, from the first event on. */
export function readBatchFile(text: string): Result<ReadBatch> {
  const given = parsedJson(text);
  if (!given.ok) return given;
  const known = v.safeParse(v.object({ format: v.literal(BATCH_FORMAT), version: v.number() }), given.value);
  if (!known.success) return refused({ code: 'not-a-batch-file' });
  if (known.output.version > BATCH_VERSION)
    return refused({ code: 'newer-format', version: known.output.version });
  const file = v.safeParse(batchFileShape, given.value);
  return file.success
    ? judged(file.output)
    : refused({ code: 'batch-file-damaged', ...firstFault(file.issues) });
}

function judged({ events, ...identity }: v.InferOutput<typeof batchFileShape>): Result<ReadBatch> {
  const sheet = parseKitSheet(identity.sheet);
  if (!sheet.ok) return sheet;
  const { snapshot, mismatch } = replay(identity, events);
  return mismatch ? refused(mismatch) : accepted({ header: headerOf(identity, snapshot), events });
}

function parsedJson(text: string): Result<unknown> {
  try {
    return accepted(JSON.parse(text));
  } catch {
    return refused({ code: 'not-json' });
  }
}
