import type { TemperatureScale } from '../../domain/temperature';
import type { VolumeUnit } from '../../domain/volume';
import type { Preferences } from '../../domain/preferences';
import type { AddingPhase } from '../../procedure/contents';
import type { KitSheet } from '../../procedure/kit-sheet';
import { entries } from './entries';
import { firstScreens } from './first-screens';
import { help } from './help';
import { safety } from './safety';

/** The words of the screens around the bench: the first one's, start, journal, settings, help, safety. */

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

const goesIn: Record<AddingPhase, string> = {
  mix: 'goes in while mixing',
  pitch: 'goes on last, when the must is warm',
  ferment: 'goes in during fermentation',
  stabilise: 'goes in only when fermentation is proven over',
  fine: 'goes in when the gas is out',
  clear: 'goes in while it clears',
  bottle: 'goes in before bottling',
};

const closures: Record<KitSheet['bottle']['closure'], string> = {
  cork: 'corks',
  'screw cap': 'screw caps',
  'crown cap': 'crown caps',
};

export const screens = {
  ...firstScreens,

  start: {
    title: 'Start a batch',
    which: 'Which kit is in the box?',
    fromFile: 'Use a sheet from a file',
    fileRefused: 'That sheet was not taken',
    fileTaken: (name: string) => `${name} was read and is chosen.`,
    edition: (edition: string) => `edition ${edition}`,
    promises: (kit: string) => `What ${kit} promises`,
    batch: 'Batch',
    bottles: 'Bottles',
    bottleCount: (count: string, millilitres: string, closure: KitSheet['bottle']['closure']) =>
      `about ${count} of ${millilitres} ml, and ${closures[closure]}`,
    gravity: 'Gravity at the start',
    between: (lowest: string, highest: string) => `between ${lowest} and ${highest}`,
    dry: 'Finished fermenting at',
    orLower: (limit: string, readings: string, hours: string) =>
      `${limit} or lower, in ${readings} readings at least ${hours} apart`,
    stabilise: 'Stabilise on',
    bottle: 'Bottle on',
    dayAndDate: (day: string, date: string) => `${day}, ${date}`,
    counting:
      'Counted as if the yeast went in today: the day of the yeast is day 0. Your readings may move these days later, never earlier.',
    sachets: 'Sachets it will want',
    sachet: (printed: string, count: number) => (count === 1 ? printed : `${printed}, ${count} of them`),
    goesIn,
    allergen: (allergen: string) => `contains ${allergen}: it goes on the label`,
    sheet: 'The sheet itself',
    keepSheet: 'Keep this sheet as a file',
    yours: 'Yours',
    name: 'What do you call this batch?',
    nameHint: 'Something to know it by on the shelf.',
    nameMissing: 'Give the batch a name, so that you can tell it from the next.',
    suggestion: (kit: string, month: string) => `${kit}, ${month}`,
    freeHour: 'At what hour are you usually free?',
    freeHourHint: 'Readings and checks fall due at this hour.',
    begin: 'begin this batch',
  },

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
  hour: (hour: number) => `${String(hour).padStart(2, '0')}:00`,
};
