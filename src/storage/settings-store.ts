import { promisifyRequest } from 'idb-keyval';
import * as v from 'valibot';
import { FIRST_PREFERENCES, type Preferences } from '../domain/preferences';
import type { Database } from './database';

const KEY = ['preferences'];

/** Field by field: what cannot be read, or is not there yet, is as it was on the first day. */
const preferences = v.object({
  volume: v.fallback(v.picklist(['litres', 'US gallons', 'imperial gallons']), FIRST_PREFERENCES.volume),
  temperature: v.fallback(v.picklist(['°C', '°F']), FIRST_PREFERENCES.temperature),
  freeHour: v.fallback(
    v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(23)),
    FIRST_PREFERENCES.freeHour,
  ),
  theme: v.fallback(v.picklist(['device', 'light', 'dark']), FIRST_PREFERENCES.theme),
});

/** What the maker chose once for everything, kept beside the batches. */
export class SettingsStore {
  readonly #database: Database;

  constructor(database: Database) {
    this.#database = database;
  }

  async read(): Promise<Preferences> {
    const kept: unknown = await this.#database.read((table) => promisifyRequest<unknown>(table.get(KEY)));
    return { ...FIRST_PREFERENCES, ...v.parse(preferences, v.is(v.looseObject({}), kept) ? kept : {}) };
  }

  async write({ volume, temperature, freeHour, theme }: Preferences): Promise<void> {
    await this.#database.write((table) => {
      table.put({ volume, temperature, freeHour, theme }, KEY);
      return promisifyRequest(table.transaction);
    });
  }
}
