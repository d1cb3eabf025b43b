import { promisifyRequest } from 'idb-keyval';
import type { Database } from './database';

const KEY = ['asked to keep'];

/**
 * Asks the browser, once per device, not to clear this app's storage when space runs short. Whether it promised.
 * Some browsers put the question to the maker, so it is asked when the first batch begins and never again.
 */
export async function keepStorage(database: Database): Promise<boolean> {
  if (!('storage' in navigator) || !('persist' in navigator.storage)) return false;
  if (await navigator.storage.persisted()) return true;
  const asked = await database.read((table) => promisifyRequest<unknown>(table.get(KEY)));
  if (asked === true) return false;
  await database.write((table) => {
    table.put(true, KEY);
    return promisifyRequest(table.transaction);
  });
  return navigator.storage.persist();
}
