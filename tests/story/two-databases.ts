import { IDBFactory } from 'fake-indexeddb';
import 'fake-indexeddb/auto';
import { promisifyRequest } from 'idb-keyval';
import type { Problem } from '../../src/domain/problem';
import type { Database } from '../../src/storage/database';
import { idbDatabase } from '../../src/storage/idb-database.browser';
import { MirroredJournalStore } from '../../src/storage/mirrored-journal-store';

/** A fresh browser profile, and the app's two databases in it. */
export class TwoDatabases {
  readonly first: Database;
  readonly second: Database;
  readonly warnings: Problem[] = [];

  constructor() {
    globalThis.indexedDB = new IDBFactory();
    this.first = idbDatabase('fallbright');
    this.second = idbDatabase('fallbright second copy');
  }

  /** The store as one tab opens it. */
  store(first = this.first, second = this.second): MirroredJournalStore {
    return new MirroredJournalStore(first, second, (problem) => this.warnings.push(problem));
  }
}

/** Does something to a database behind the app's back. */
export const tamper = (database: Database, change: (table: IDBObjectStore) => void): Promise<unknown> =>
  database.write((table) => {
    change(table);
    return promisifyRequest(table.transaction);
  });

/** Everything in a database: each key as text, and its value. */
export const contents = (database: Database): Promise<Map<string, unknown>> =>
  database.read(async (table) => {
    const [keys, values] = await Promise.all([
      promisifyRequest(table.getAllKeys()),
      promisifyRequest<unknown[]>(table.getAll()),
    ]);
    return new Map(keys.map((key, index) => [JSON.stringify(key), values[index]]));
  });
