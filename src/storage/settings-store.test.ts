import { beforeEach, describe, expect, test } from 'vitest';
import { tamper, TwoDatabases } from '../../tests/story/two-databases';
import { FIRST_PREFERENCES, type Preferences } from '../domain/preferences';
import { SettingsStore } from './settings-store';

let disk: TwoDatabases;
let settings: SettingsStore;
beforeEach(() => {
  disk = new TwoDatabases();
  settings = new SettingsStore(disk.first);
});

const chosen: Preferences = { volume: 'US gallons', temperature: '°F', freeHour: 7, theme: 'dark' };

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
      'one that is missing',
      { volume: 'US gallons', temperature: '°F', freeHour: 7 },
      { ...chosen, theme: 'device' },
    ],
    ['one that nobody knows', { ...chosen, sound: 'loud' }, chosen],
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
