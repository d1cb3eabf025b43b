import { promisifyRequest } from 'idb-keyval';
import * as v from 'valibot';
import { EARS, FIRST_EAR_PREFERENCES } from '../domain/ear-preferences';
import { KEY_ACTIONS, keyNamed, NO_OWN_KEYS, whyUnmappable } from '../domain/key-preferences';
import { FIRST_PREFERENCES, type Preferences } from '../domain/preferences';
import { FIRST_SOUND_PREFERENCES, LOUDNESSES, RATES } from '../domain/sound-preferences';
import type { Database } from './database';

const KEY = ['preferences'];

const within = ({ least, most }: { least: number; most: number }) =>
  v.pipe(v.number(), v.minValue(least), v.maxValue(most));

const sound = v.pipe(
  v.object({
    muted: v.fallback(v.boolean(), FIRST_SOUND_PREFERENCES.muted),
    rate: v.fallback(within(RATES), FIRST_SOUND_PREFERENCES.rate),
    volume: v.fallback(within(LOUDNESSES), FIRST_SOUND_PREFERENCES.volume),
    voice: v.fallback(v.optional(v.string()), undefined),
  }),
  v.transform(({ voice, ...rest }) => (voice === undefined ? rest : { ...rest, voice })),
);

const ear = v.object({
  who: v.fallback(v.picklist(EARS), FIRST_EAR_PREFERENCES.who),
  on: v.fallback(v.boolean(), FIRST_EAR_PREFERENCES.on),
});

const action = v.picklist(KEY_ACTIONS);

/** Key by key: one that cannot be mapped, or not to that, is as it was at first. */
const keys = v.pipe(
  v.record(v.string(), v.unknown()),
  v.transform((kept) =>
    Object.fromEntries(
      Object.entries(kept).flatMap(([key, does]) =>
        v.is(action, does) && key === keyNamed(key) && !whyUnmappable(key) ? [[key, does]] : [],
      ),
    ),
  ),
);

/** Field by field: what cannot be read, or is not there yet, is as it was on the first day. */
const preferences = v.object({
  volume: v.fallback(v.picklist(['litres', 'US gallons', 'imperial gallons']), FIRST_PREFERENCES.volume),
  temperature: v.fallback(v.picklist(['°C', '°F']), FIRST_PREFERENCES.temperature),
  freeHour: v.fallback(
    v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(23)),
    FIRST_PREFERENCES.freeHour,
  ),
  theme: v.fallback(v.picklist(['device', 'light', 'dark']), FIRST_PREFERENCES.theme),
  sound: v.fallback(sound, FIRST_PREFERENCES.sound),
  ear: v.fallback(ear, FIRST_PREFERENCES.ear),
  keys: v.fallback(keys, NO_OWN_KEYS),
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

  async write({ volume, temperature, freeHour, theme, sound, ear, keys }: Preferences): Promise<void> {
    await this.#database.write((table) => {
      table.put({ volume, temperature, freeHour, theme, sound, ear, keys }, KEY);
      return promisifyRequest(table.transaction);
    });
  }
}
