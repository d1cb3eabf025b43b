import type { AddingPhase } from '../../procedure/contents';
import type { KitSheet } from '../../procedure/kit-sheet';
import { firstScreens } from './first-screens';

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

/** The words of the screens on the way to the bench: the first one's, and start. */
export const startScreens = {
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
    running:
      'Is it running already? Begin it here all the same. On its first page choose “it is running already”.',
  },

  hour: (hour: number) => `${String(hour).padStart(2, '0')}:00`,
};
