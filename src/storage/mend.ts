import * as v from 'valibot';
import { ProblemError } from '../domain/problem';
import { batchEvent, type BatchEvent } from '../workflow/batch-event';
import { BATCH_VERSION, type BatchHeader } from '../workflow/batch-header';
import type { StoredBatch } from '../workflow/journal-store';

/** One copy of a batch as it lies in a database, whatever is there. */
export type Found = { header: unknown; events: ReadonlyMap<number, unknown> };

/** What a copy lacks of the batch that was put together. */
export type Lacking = { header?: BatchHeader; events: ReadonlyMap<number, BatchEvent> };

const headerShape = v.looseObject({
  version: v.pipe(v.number(), v.minValue(1)),
  id: v.string(),
  name: v.string(),
  entries: v.pipe(v.number(), v.integer(), v.minValue(0)),
  begun: v.object({ at: v.number() }),
  sheet: v.looseObject({}),
});

/** A header as found, where it is one. The sheet in it passed its own door when the batch began. */
export const asHeader = (given: unknown): BatchHeader | undefined =>
  v.is(headerShape, given) ? (given as unknown as BatchHeader) : undefined;

const asEvent = (given: unknown): BatchEvent | undefined => {
  const parsed = v.safeParse(batchEvent, given);
  return parsed.success ? parsed.output : undefined;
};

/** The header that knows of more events. */
export const laterHeader = (one?: BatchHeader, other?: BatchHeader): BatchHeader | undefined =>
  (one?.entries ?? -1) >= (other?.entries ?? -1) ? one : other;

/**
 * One batch out of two copies. The copy with the longer unbroken run leads, and the other fills its gaps. What neither
 * holds is named as a problem, and the events up to there are kept.
 */
export function mend(first: Found, second: Found): StoredBatch | undefined {
  const header = laterHeader(asHeader(first.header), asHeader(second.header));
  const known = Math.max(header?.entries ?? 0, ...first.events.keys(), ...second.events.keys());
  if (!header) return known === 0 ? undefined : lost({ code: 'header-lost', entries: known });
  if ((header.version as number) > BATCH_VERSION)
    return lost({ code: 'newer-format', version: header.version });
  const copies = run([first]).length >= run([second]).length ? [first, second] : [second, first];
  const events = run(copies);
  const gap =
    events.length < known ? { problem: { code: 'journal-gap', entry: events.length + 1 } as const } : {};
  return { header, events, ...gap };
}

const lost = (problem: ProblemError['problem']): never => {
  throw new ProblemError(problem);
};

/** The unbroken events from the first on, each from the first copy that holds it whole. */
function run(copies: readonly Found[]): BatchEvent[] {
  const events: BatchEvent[] = [];
  for (;;) {
    const entry = events.length + 1;
    const event = copies.map((copy) => asEvent(copy.events.get(entry))).find(Boolean);
    if (!event) return events;
    events.push(event);
  }
}

/** What must be written into a copy for it to hold the batch; nothing where it does. */
export function lacking(copy: Found, { header, events }: StoredBatch): Lacking | undefined {
  const missing = events.flatMap((event, index) =>
    asEvent(copy.events.get(index + 1)) ? [] : [[index + 1, event] as const],
  );
  const behind = (asHeader(copy.header)?.entries ?? -1) !== events.length;
  if (missing.length === 0 && !behind) return undefined;
  return { events: new Map(missing), ...(behind ? { header: { ...header, entries: events.length } } : {}) };
}
