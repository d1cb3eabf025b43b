import { promisifyRequest } from 'idb-keyval';
import type { BatchEvent } from '../workflow/batch-event';
import type { BatchHeader } from '../workflow/batch-header';
import type { Written } from '../workflow/journal-store';
import type { Database, Key } from './database';
import { asHeader, type Found, type Lacking } from './mend';

const HEADER = 'header';
const EVENT = 'event';
const headerKey = (id: string): [string, string] => [HEADER, id];
const eventKey = (id: string, entry: number): [string, string, number] => [EVENT, id, entry];

/** All batches in one database: a header each, and one key per event. */
export class BatchCopy {
  readonly #database: Database;

  constructor(database: Database) {
    this.#database = database;
  }

  headers(): Promise<BatchHeader[]> {
    return this.#database.read(async (table) => {
      const found: unknown[] = await promisifyRequest(table.getAll(this.#database.under(HEADER)));
      return found.map(asHeader).filter((header) => header !== undefined);
    });
  }

  find(id: string): Promise<Found> {
    return this.#database.read(async (table) => {
      const range = this.#database.under(EVENT, id);
      const [header, keys, values] = await Promise.all([
        promisifyRequest<unknown>(table.get(headerKey(id))),
        promisifyRequest(table.getAllKeys(range)),
        promisifyRequest<unknown[]>(table.getAll(range)),
      ]);
      return { header, events: new Map(keys.map((key, index) => [entryOf(key as Key), values[index]])) };
    });
  }

  create(header: BatchHeader, events: readonly BatchEvent[]): Promise<Written> {
    return this.#database.write((table) => {
      table.add(header, headerKey(header.id));
      events.forEach((event, index) => table.add(event, eventKey(header.id, index + 1)));
      return written(table);
    });
  }

  /**
   * `add` refuses a key that is there; the header says whether the batch still is, and as long as the writer thinks. All is
   * asked for at once, and taken back where the header says no: a maker waits for every answer of the disk.
   */
  append(id: string, entry: number, event: BatchEvent, header: BatchHeader): Promise<Written> {
    return this.#database.write((table) => {
      withHeader(table, id, (before) => {
        if (before?.entries !== entry - 1) table.transaction.abort();
      });
      table.add(event, eventKey(id, entry));
      table.put(header, headerKey(id));
      return written(table);
    });
  }

  /** Writes what the copy lacks. A header that has gone further meanwhile stays. */
  fill(id: string, { header, events }: Lacking): Promise<Written> {
    return this.#database.write((table) => {
      for (const [entry, event] of events) table.put(event, eventKey(id, entry));
      withHeader(table, id, (before) => {
        if (header && (before?.entries ?? -1) <= header.entries) table.put(header, headerKey(id));
      });
      return written(table);
    });
  }

  remove(id: string): Promise<Written> {
    return this.#database.write((table) => {
      table.delete(headerKey(id));
      table.delete(this.#database.under(EVENT, id));
      return written(table);
    });
  }
}

const entryOf = (key: Key): number => Number(key.at(-1));

function withHeader(
  table: IDBObjectStore,
  id: string,
  work: (header: BatchHeader | undefined) => void,
): void {
  const request = table.get(headerKey(id));
  request.onsuccess = () => work(asHeader(request.result));
}

/** Done when the transaction is. One that we broke off ourselves has no error; a key that was there has its own. */
const written = ({ transaction }: IDBObjectStore): Promise<Written> =>
  new Promise((resolve, reject) => {
    transaction.oncomplete = () => resolve('written');
    transaction.onabort = () => {
      const { error } = transaction;
      if (error === null || error.name === 'ConstraintError') resolve('collision');
      else reject(error);
    };
  });
