import { FIRST_EAR_PREFERENCES, type EarPreferences } from './ear-preferences';
import { NO_OWN_KEYS, type Keys } from './key-preferences';
import { FIRST_SOUND_PREFERENCES, type SoundPreferences } from './sound-preferences';
import type { TemperatureScale } from './temperature';
import type { VolumeUnit } from './volume';

/** What the maker chose once for everything: units, their free hour, how it looks and sounds, and its keys. */
export type Preferences = {
  volume: VolumeUnit;
  temperature: TemperatureScale;
  /** An hour of the day, 0–23. */
  freeHour: number;
  theme: 'device' | 'light' | 'dark';
  sound: SoundPreferences;
  ear: EarPreferences;
  /** What the maker mapped, over the keys of the first day. */
  keys: Keys;
};

export const FIRST_PREFERENCES: Preferences = {
  volume: 'litres',
  temperature: '°C',
  freeHour: 18,
  theme: 'device',
  sound: FIRST_SOUND_PREFERENCES,
  ear: FIRST_EAR_PREFERENCES,
  keys: NO_OWN_KEYS,
};
