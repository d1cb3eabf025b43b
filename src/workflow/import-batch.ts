import { hoursAfter, type Moment } from '../domain/calendar';
import { accepted, refused, type Result } from '../domain/result';
import { readBatchFile, writeBatchFile, type ReadBatch } from './batch-file';
import { headerOf } from './header-of';
import type { Exclusively, JournalStore, OtherTabs, StoredBatch } from './journal-store';
import { orProblem } from './or-problem';
import { replay, step } from './replay';

export type ImportPorts = {
  store: JournalStore;
  clock: () => Moment;
  exclusively: Exclusively;
  otherTabs: OtherTabs;
  newId: () => string;
};

/**
 * What became of a file: a batch that was not here; one that is here exactly so; one that went on here or in the file,
 * where the longer of the two stands; or one that went another way, which is kept beside the first under a new id.
 */
export type Imported = { id: string; outcome: 'new' | 'same' | 'longer in file' | 'longer here' | 'copy' };

/** Takes a batch in from a file's text. What is already here is never shortened or overwritten. */
export async function importBatch(ports: ImportPorts, text: string): Promise<Result<Imported>> {
  const batch = readBatchFile(text);
  if (!batch.ok) return batch;
  const last = batch.value.events.at(-1) ?? batch.value.header.begun;
  if (last.at > hoursAfter(ports.clock().at, CLOCKS_MAY_DIFFER_BY_HOURS))
    return refused({ code: 'in-the-future', takenAt: last.at });
  const work = () => takeIn(ports, batch.value);
  return orProblem(() => ports.exclusively(`batch ${batch.value.header.id}`, work), refused);
}

/** Two devices may disagree about the time by a whole zone; a batch further ahead than that would hold up its maker. */
const CLOCKS_MAY_DIFFER_BY_HOURS = 24;

async function takeIn(ports: ImportPorts, batch: ReadBatch): Promise<Result<Imported>> {
  const { id } = batch.header;
  const here = await ports.store.read(id);
  const outcome = here ? comparison(here, batch) : 'new';
  if (outcome === 'same' || outcome === 'longer here') return accepted({ id, outcome });
  if (here && outcome === 'longer in file') return goOn(ports, here, batch);
  return create(ports, batch, outcome === 'copy' ? ports.newId() : id, outcome);
}

/** A batch that cannot be read to its end here is never continued: what the file holds is kept beside it. */
function comparison(here: StoredBatch, { header, events }: ReadBatch): Imported['outcome'] {
  const shared = Math.min(here.events.length, events.length);
  const comparable = (batch: ReadBatch): string =>
    writeBatchFile({ ...batch.header, name: header.name }, batch.events.slice(0, shared));
  if (here.problem || comparable(here) !== comparable({ header, events })) return 'copy';
  if (here.events.length === events.length) return 'same';
  return here.events.length > events.length ? 'longer here' : 'longer in file';
}

async function create(
  { store, otherTabs }: ImportPorts,
  batch: ReadBatch,
  id: string,
  outcome: Imported['outcome'],
): Promise<Result<Imported>> {
  if ((await store.create({ ...batch.header, id }, batch.events)) === 'collision')
    return refused({ code: 'written-elsewhere' });
  otherTabs.tell(id);
  return accepted({ id, outcome });
}

/** Event by event, so that a store that gives up half-way leaves a batch that is whole as far as it goes. */
async function goOn(
  { store, otherTabs }: ImportPorts,
  here: StoredBatch,
  { events }: ReadBatch,
): Promise<Result<Imported>> {
  const { id } = here.header;
  let { snapshot } = replay(here.header, here.events);
  for (const [index, event] of events.entries()) {
    if (index < here.events.length) continue;
    const next = step(snapshot, event);
    if ('problem' in next) return refused(next.problem);
    snapshot = next.snapshot;
    const written = await store.append(id, index + 1, event, headerOf(here.header, snapshot));
    if (written === 'collision') return refused({ code: 'written-elsewhere' });
  }
  otherTabs.tell(id);
  return accepted({ id, outcome: 'longer in file' });
}
