import { createStore, type UseStore } from 'idb-keyval';
import { ProblemError, type DeviceProblem } from '../domain/problem';
import type { Database } from './database';

/** Opens a database of this origin ahead of its first use, so that several open side by side. */
export function idbDatabase(name: string): Database {
  const use = createStore(name, TABLE);
  const strictly = strictlyBy(use);
  // Refused now, it is opened again at its first use, and refused there.
  refusalAsProblem(async () => use('readonly', () => undefined)).catch(() => undefined);
  return {
    read: (work) => refusalAsProblem(() => use('readonly', work)),
    write: (work) => refusalAsProblem(() => strictly(work)),
    // Arrays sort after every string and number, so an empty one ends the range.
    under: (...parts) => IDBKeyRange.bound(parts, [...parts, []]),
  };
}

const TABLE = 'kept';

type Write = <Outcome>(work: (table: IDBObjectStore) => PromiseLike<Outcome>) => Promise<Outcome>;

/**
 * idb-keyval cannot ask for durability, and a browser's default may be "in memory". A transaction of its own leads to the
 * database, which can. That one is remembered: a maker waits for every transaction between a press and the next act.
 */
function strictlyBy(use: UseStore): Write {
  let database: IDBDatabase | undefined;
  const connect = async (): Promise<IDBDatabase> => {
    const connected = await use('readonly', ({ transaction }) => transaction.db);
    connected.addEventListener('close', () => (database = undefined));
    return (database = connected);
  };
  const tableOf = (connected: IDBDatabase): IDBObjectStore =>
    connected.transaction(TABLE, 'readwrite', { durability: 'strict' }).objectStore(TABLE);
  return async (work) => work(tableOf(database ?? (await connect())));
}

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
