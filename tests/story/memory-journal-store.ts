import type { BatchEvent } from '../../src/workflow/batch-event';
import type { BatchHeader } from '../../src/workflow/batch-header';
import type { JournalStore, StoredBatch, Written } from '../../src/workflow/journal-store';

/** A store that forgets with the test. `before` stands in the way of every call, to refuse it or to hold it up. */
export class MemoryJournalStore implements JournalStore {
  readonly batches = new Map<string, StoredBatch>();
  before: () => Promise<void> = () => Promise.resolve();

  headers(): Promise<readonly BatchHeader[]> {
    return Promise.resolve([...this.batches.values()].map(({ header }) => header));
  }

  async read(id: string): Promise<StoredBatch | undefined> {
    await this.before();
    return structuredClone(this.batches.get(id));
  }

  async create(header: BatchHeader, events: readonly BatchEvent[] = []): Promise<Written> {
    await this.before();
    if (this.batches.has(header.id)) return 'collision';
    this.batches.set(header.id, structuredClone({ header, events }));
    return 'written';
  }

  async append(id: string, entry: number, event: BatchEvent, header: BatchHeader): Promise<Written> {
    await this.before();
    const batch = this.batches.get(id);
    if (batch?.events.length !== entry - 1) return 'collision';
    this.batches.set(id, structuredClone({ header, events: [...batch.events, event] }));
    return 'written';
  }

  remove(id: string): Promise<void> {
    this.batches.delete(id);
    return Promise.resolve();
  }
}
