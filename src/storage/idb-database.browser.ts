import { createStore, type UseStore } from 'idb-keyval';
import { ProblemError, type DeviceProblem } from '../domain/problem';
import type { Database } from './database';

/** Opens a database of this origin ahead of its first use, so that several open side by side. */
export function idbDatabase(name: string): Database {
  const use = createStore(name, 'kept');
  // Refused now, it is opened again at its first use, and refused there.
  refusalAsProblem(async () => use('readonly', () => undefined)).catch(() => undefined);
  return {
    read: (work) => refusalAsProblem(() => use('readonly', work)),
    write: (work) => refusalAsProblem(() => strictly(use, work)),
    // Arrays sort after every string and number, so an empty one ends the range.
    under: (...parts) => IDBKeyRange.bound(parts, [...parts, []]),
  };
}

/** idb-keyval cannot ask for durability, and a browser's default may be "in memory". Its transaction leads to the database, which can. */
const strictly = <Outcome>(
  use: UseStore,
  work: (table: IDBObjectStore) => PromiseLike<Outcome>,
): Promise<Outcome> =>
  use('readonly', ({ name, transaction: { db } }) =>
    work(db.transaction(name, 'readwrite', { durability: 'strict' }).objectStore(name)),
  );

async function refusalAsProblem<Outcome>(work: () => Promise<Outcome>): Promise<Outcome> {
  try {
    return await work();
  } catch (error) {
    throw isOurFault(error) ? error : new ProblemError(problemOf(error), error);
  }
}

const nameOf = (error: unknown): string =>
  error instanceof Error || error instanceof DOMException ? error.name : '';

/** What cannot be cloned or is no key was handed in wrong: a bug, not the device's refusal. */
const isOurFault = (error: unknown): boolean => ['DataCloneError', 'DataError'].includes(nameOf(error));

const problemOf = (error: unknown): DeviceProblem =>
  nameOf(error) === 'QuotaExceededError' ? { code: 'storage-full' } : { code: 'storage-refused' };
