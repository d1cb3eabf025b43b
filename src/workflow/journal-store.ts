import type { Problem } from '../domain/problem';
import type { BatchEvent } from './batch-event';
import type { BatchHeader } from './batch-header';

/** A batch as the store holds it. With a problem, the events are those up to where the store can vouch for them. */
export type StoredBatch = { header: BatchHeader; events: readonly BatchEvent[]; problem?: Problem };

/** A collision: another tab wrote that entry first, or removed the batch. Nothing was written. */
export type Written = 'written' | 'collision';

/** Where journals are kept. What it cannot do it throws as a `ProblemError`; what it says is written will survive. */
export interface JournalStore {
  headers(): Promise<readonly BatchHeader[]>;
  read(id: string): Promise<StoredBatch | undefined>;
  /** A new batch, with all its events where it comes from elsewhere. */
  create(header: BatchHeader, events?: readonly BatchEvent[]): Promise<Written>;
  /** One more event and the header after it, both or neither. Entries count from 1. */
  append(id: string, entry: number, event: BatchEvent, header: BatchHeader): Promise<Written>;
  remove(id: string): Promise<void>;
}

/** Does some work while no other tab does work of the same name. */
export type Exclusively = <Outcome>(name: string, work: () => Promise<Outcome>) => Promise<Outcome>;

/** The other tabs of this app: they are told of a batch that changed, and tell. */
export interface OtherTabs {
  tell(batch: string): void;
  /** Returns the way to stop listening. */
  listen(heard: (batch: string) => void): () => void;
}
