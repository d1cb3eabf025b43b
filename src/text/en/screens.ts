import type { TemperatureScale } from '../../domain/temperature';
import type { VolumeUnit } from '../../domain/volume';
import type { Preferences } from '../../domain/preferences';
import { entries } from './entries';
import { help } from './help';
import { safety } from './safety';
import { startScreens } from './start-screens';

/** The words of the screens around the bench: those on the way to it, journal, settings, help, safety. */

const volumes: Record<VolumeUnit, string> = {
  litres: 'Litres',
  'US gallons': 'US gallons',
  'imperial gallons': 'Imperial gallons',
};

const temperatures: Record<TemperatureScale, string> = {
  '°C': 'Celsius (°C)',
  '°F': 'Fahrenheit (°F)',
};

const themes: Record<Preferences['theme'], string> = {
  device: 'Like the device',
  light: 'Light, for the day',
  dark: 'Dark, for the cellar',
};

const sound = {
  title: 'Sound',
  heard: 'Voice and tones',
  hearing: { on: 'On', muted: 'Muted: captions only' },
  rate: 'How fast the voice speaks',
  slower: 'slower',
  asItIs: 'as it is',
  faster: 'faster',
  rateIs: (percent: string) => `${percent} % of the voice’s own pace`,
  volume: 'How loud voice and tones are',
  quieter: 'quieter',
  louder: 'louder',
  volumeIs: (percent: string) => `${percent} % of what the device is set to`,
  voice: 'Which voice speaks',
  anyVoice: 'Let Fallbright choose',
  oneVoice: (name: string, language: string, local: boolean) =>
    local ? `${name} (${language})` : `${name} (${language}), only with a network`,
  looking: 'Looking for the voices of this device.',
  noVoice:
    'This device has no voice that speaks English: captions show every line, and tones sound unless you mute them.',
  say: 'say something',
  sample: 'This is how I speak at the bench. Stir for two minutes, then let it rest.',
  notSpoken: {
    muted: 'It is muted, so the line is only shown.',
    failed: 'The device did not speak the line. Read along: captions show every line.',
  },
};

export const screens = {
  ...startScreens,

  journal: {
    title: 'Journal',
    of: (name: string) => `Journal of ${name}`,
    newestFirst: 'Newest first',
    oldestFirst: 'Oldest first',
    order: 'Order',
    empty: 'Nothing is recorded yet. The first act will be the first line.',
    entry: (entry: number) => `entry ${entry}`,
    beforeYeast: 'before the yeast',
    backDated: (when: string) => `told later: it was taken ${when}`,
    struck: 'struck',
    note: 'Add a note',
    noteHint: 'Smell, taste, weather, a doubt: whatever you would want to know next time.',
    write: 'write it down',
    noteMissing: 'There is nothing in the note yet.',
    noted: 'The note is in the journal.',
    keep: 'Keep and delete',
    keepHint: 'One file holds the whole batch: its sheet, every entry, every correction.',
    keepFile: 'Keep it as a file',
    remove: 'Delete this batch',
    removeHint: 'Deleting cannot be undone. Keep it as a file first, and it can come back.',
    removeName: (name: string) => `To delete it, type its name: ${name}`,
    removeNow: 'delete for good',
    removeStay: 'keep the batch',
    nameDiffers: 'That is not the name of this batch, so nothing was deleted.',
    entries,
  },

  settings: {
    title: 'Settings',
    saved: 'Kept on this device.',
    volume: 'Volumes',
    volumes,
    temperature: 'Temperatures',
    temperatures,
    freeHour: 'The hour you are usually free',
    freeHourHint: 'For batches that you start from now on.',
    theme: 'How it looks',
    themes,
    sound,
  },

  help,
  safety,

  actName: (step: string, printed: string | undefined) =>
    printed === undefined ? step : `${step}: “${printed}”`,
};
