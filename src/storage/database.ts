/** A key of the one table: what it is, of which batch, and which entry. */
export type Key = readonly (string | number)[];

/** One key-value database of the browser. What it refuses is thrown as a `ProblemError`. */
export interface Database {
  read<Outcome>(work: (table: IDBObjectStore) => PromiseLike<Outcome>): Promise<Outcome>;
  /** A transaction that is on the disk, as far as the browser lets us ask for that, before it counts as done. */
  write<Outcome>(work: (table: IDBObjectStore) => PromiseLike<Outcome>): Promise<Outcome>;
  /** All keys that begin with these parts. */
  under(...parts: Key): IDBKeyRange;
}
