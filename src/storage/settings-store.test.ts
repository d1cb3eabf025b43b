import { beforeEach, describe, expect, test } from 'vitest';
import { tamper, TwoDatabases } from '../../tests/story/two-databases';
import { FIRST_EAR_PREFERENCES } from '../domain/ear-preferences';
import { FIRST_PREFERENCES, type Preferences } from '../domain/preferences';
import { FIRST_SOUND_PREFERENCES } from '../domain/sound-preferences';
import { SettingsStore } from './settings-store';

let disk: TwoDatabases;
let settings: SettingsStore;
beforeEach(() => {
  disk = new TwoDatabases();
  settings = new SettingsStore(disk.first);
});

const chosen: Preferences = {
  volume: 'US gallons',
  temperature: '°F',
  freeHour: 7,
  theme: 'dark',
  sound: { muted: true, rate: 0.8, volume: 0.4, voice: 'anna' },
  ear: { who: 'browser', on: true },
  keys: { b: 'main', F13: 'back' },
};
const keyed = (keys: unknown) => ({ ...chosen, keys });
const sounding = <Sound>(sound: Sound) => ({ ...chosen, sound });

describe('settings', () => {
  test('are those of the first day until some are chosen', async () =>
    expect(await settings.read()).toEqual(FIRST_PREFERENCES));

  test('are kept', async () => {
    await settings.write(chosen);
    expect(await new SettingsStore(disk.first).read()).toEqual(chosen);
  });

  test.each<[string, unknown, Preferences]>([
    ['a unit that is none', { ...chosen, volume: 'gallons' }, { ...chosen, volume: 'litres' }],
    ['an hour that no clock has', { ...chosen, freeHour: 24 }, { ...chosen, freeHour: 18 }],
    [
      'a day before there were looks, sounds, ears and keys',
      { volume: 'US gallons', temperature: '°F', freeHour: 7 },
      { ...chosen, theme: 'device', sound: FIRST_SOUND_PREFERENCES, ear: FIRST_EAR_PREFERENCES, keys: {} },
    ],
    [
      'ears that nobody has',
      { ...chosen, ear: { who: 'the cat' } },
      { ...chosen, ear: FIRST_EAR_PREFERENCES },
    ],
    ['a sound that is none', sounding('loud'), sounding(FIRST_SOUND_PREFERENCES)],
    [
      'a sound that is half there',
      sounding({ volume: 0.4 }),
      sounding({ ...FIRST_SOUND_PREFERENCES, volume: 0.4 }),
    ],
    [
      'a pace that none can follow',
      sounding({ ...chosen.sound, rate: 2.1 }),
      sounding({ ...chosen.sound, rate: 1 }),
    ],
    [
      'a loudness of nothing',
      sounding({ ...chosen.sound, volume: 0 }),
      sounding({ ...chosen.sound, volume: 1 }),
    ],
    [
      'a voice without a name',
      sounding({ ...chosen.sound, voice: 7 }),
      sounding({ muted: true, rate: 0.8, volume: 0.4 }),
    ],
    ['keys that are none', keyed('b'), { ...chosen, keys: {} }],
    ['a key for what nothing does', keyed({ b: 'main', c: 'override' }), { ...chosen, keys: { b: 'main' } }],
    [
      'keys that cannot be mapped',
      keyed({ 1: 'main', Tab: 'main', Escape: 'back', Shift: 'wait', F5: 'again', B: 'main', c: 'wait' }),
      { ...chosen, keys: { c: 'wait' } },
    ],
    ['one that nobody knows', { ...chosen, smell: 'of yeast' }, chosen],
    ['nonsense', 'nonsense', FIRST_PREFERENCES],
  ])('keep what can be read of %s', async (_, kept, read) => {
    await tamper(disk.first, (table) => table.put(kept, ['preferences']));
    expect(await settings.read()).toEqual(read);
  });

  test('do not show among the batches', async () => {
    await settings.write(chosen);
    expect(await disk.store().headers()).toEqual([]);
  });
});
