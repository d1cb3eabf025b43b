import type { Contents } from '../../procedure/contents';
import type { Allergen } from '../../procedure/kit-sheet';
import type { Place } from '../../procedure/phase';
import type { Act } from '../../procedure/step';
import type { REMEDIES } from '../../workflow/remedies';
import { drawing } from './drawing';

/** Pads that only the screen has. The others show the guide's phrases. */
const pads = {
  'go on': 'go on now',
  'new reading': 'new reading',
  'gas test': 'test for gas',
  look: 'look at the wine',
  back: 'leave this card',
  'read back': 'read it back',
};
export type OwnPad = keyof typeof pads;

const contents: Record<Contents, string> = {
  bentonite: 'bentonite, a clay',
  yeast: 'yeast',
  nutrient: 'food for the yeast',
  oak: 'oak',
  sulphite: 'sulphite',
  sorbate: 'sorbate',
  'silica finings': 'silica finings',
  'shellfish finings': 'finings from shellfish',
  'fish finings': 'finings from fish',
  'gelatine finings': 'gelatine finings',
  'sweetening pack': 'sugar and juice to sweeten',
};

const allergens: Record<Allergen, string> = {
  sulphite: 'sulphite',
  shellfish: 'shellfish',
  fish: 'fish',
  egg: 'egg',
  milk: 'milk',
};

type LitresAct = Extract<Act, { kind: 'litres' }>;
const litres: Record<LitresAct['of'], { label: string; hint: (suggested: string) => string }> = {
  brim: {
    label: 'What the vessel holds, full to the brim',
    hint: (suggested) => `Foam needs room: about ${suggested} is comfortable for this batch.`,
  },
  must: {
    label: 'Where the surface stands now',
    hint: (suggested) => `The mark for this batch is at ${suggested}.`,
  },
  wine: {
    label: 'How much wine arrived',
    hint: (suggested) => `There was ${suggested} before. What is missing stayed with the sediment.`,
  },
  vessel: {
    label: 'What the second vessel holds, full to the brim',
    hint: (suggested) => `The wine is about ${suggested}. What is left above it is room for foam.`,
  },
  room: {
    label: 'How much wine is in the vessel now',
    hint: (suggested) =>
      `${suggested} when enough is drawn off. Keep what you drew off full, airlocked and cool.`,
  },
  'top-up': { label: 'How much you topped up with', hint: () => 'Nothing added counts as 0.' },
};

/** The ways back from a gate, by the clause that sends the wine there. */
const ways = {
  'under-stirred': 'stir it again',
  'no-start-reading': 'stir and read again',
  'start-outside': 'stir and read again',
  gassy: 'stir out more gas',
  cloudy: 'leave it to clear',
  'still-moving': 'let it ferment on',
  'no-baseline': 'top up and read again',
  'dryness-in-doubt': 'read a new baseline',
} satisfies Record<WayBack, string>;
export type WayBack = (typeof REMEDIES)[number]['clause'];

/** What may be done while the next act has not come due. */
const meanwhile: Partial<Record<Place, string>> = {
  ferment:
    'Keep it warm and closed. You may look through the wall at any time, and take a reading whenever you like.',
  clear: 'Leave it still, dark and closed. Keep the airlock full of water.',
  stand: 'Leave the bottles upright, so that the corks grip before they lie down.',
  rest: 'Keep the bottles cool, dark and still. If a closure rises, say so here at once.',
};

/** Every word of the screens that lead through a batch. */
export const bench = {
  pads,
  contents,
  allergens,
  litres,
  meanwhile,

  where: {
    label: 'Where we are',
    act: (nth: number, of: number) => `act ${nth} of ${of}`,
    edge: (nth: number, of: number) => `Stage ${nth} of ${of}`,
    gate: 'gate',
  },
  nav: { label: 'Leave this act', home: 'all batches', journal: 'journal' },
  keys: { space: 'space' },
  otherWays: 'Other ways',
  pressLabel: 'What you can say or press',

  careful: 'Before you start',
  allergen: (allergen: string) => `allergen: ${allergen}`,
  details: (details: readonly string[]) => details.join(' · '),
  fromTheSheet: 'From your kit sheet',
  notTaken: 'That was not taken',
  heldBecause: 'Held for now',
  why: 'Why is that?',
  answerThis: 'Answer this one too, then go on.',
  yes: 'Yes',
  no: 'No',

  sachet: {
    count: (count: number) =>
      count === 1 ? 'one sachet' : count === 2 ? 'both sachets' : `all ${count} sachets`,
    printed: 'Printed on it',
    grams: (grams: string) => `${grams} each`,
    dissolve: 'Dissolve it first in a little of the wine or water.',
    picture: (printed: string) => `A sachet, printed: ${printed}`,
  },

  clock: {
    notStarted: (duration: string) => `${duration} by the clock`,
    paused: 'The clock is held.',
    timeUp: 'Time is up.',
    late: (duration: string) => `Time was up ${duration} ago.`,
    turnFirst: 'Bottom to top, the first way round.',
    turnOther: 'Now the other way round.',
    nextTurn: (duration: string) => `Next turn in ${duration}.`,
    spoken: (left: string) => `${left} left on the clock`,
  },

  account: {
    list: 'Tick each one that is in front of you',
    all: 'All are there.',
    row: (inRow: number, apart: number, there: number) =>
      `${String(inRow)} sachets in a row, in the order of their use${apart > 0 ? ', the yeast apart' : ''}; ${String(there)} of them there`,
    left: (count: number) => (count === 1 ? 'one still to find' : `${count} still to find`),
  },

  reading: {
    title: 'A new reading',
    sample: 'Warmth of the sample',
    sampleHint: 'Thermometer in the sample jar, first of all.',
    reading: 'What the hydrometer shows',
    readingHint: 'Eye level with the surface, at its flat part. 996, 0.996 or 0,996.',
    wine: 'Warmth of the wine itself',
    wineHint: 'In its vessel, not in the jar.',
    degassed: 'Was the gas shaken out of the sample?',
    returned: 'Did the sample go back, from a sanitised jar?',
    more: 'It was taken earlier',
    takenAt: 'When it was taken',
    takenHint: 'Leave this empty if you read it just now.',
    corrected: (read: string, sample: string, gravity: string) =>
      `${read} read at ${sample} is ${gravity} at 20 °C.`,
    asRead: (read: string) => `${read}. Right?`,
    doubtful: 'Look again before you say yes',
    spoken: (read: string) => `“${read}”`,
    wineIs: (wine: string) => `The wine itself is at ${wine}.`,
    gassy: 'The gas was not shaken out, so it will be shown but not counted.',
    kept: 'The sample did not go back.',
    earlier: (when: string) => `Taken ${when}.`,
  },

  temperature: {
    must: 'Warmth of the must',
    wine: 'Warmth of the wine',
    range: (lowest: string, highest: string) => `The yeast wants ${lowest} to ${highest}.`,
    atLeast: (lowest: string) => `It should be ${lowest} or warmer.`,
  },
  gap: {
    label: 'From the wine up to the stopper',
    hint: (atMost: string) => `At most ${atMost}: the less air, the better it keeps.`,
    unit: 'mm',
  },
  filled: {
    label: 'Bottles filled and closed',
    hint: (wanted: string) => `The wine should make about ${wanted}.`,
  },
  bottles: {
    bottles: 'Bottles, sound and clean',
    closures: 'Closures to go with them',
    hint: (wanted: string) => `The wine makes about ${wanted} bottles.`,
    closuresHint: 'A few more than bottles: some go astray.',
    threaded: 'Do the bottles have a screw thread?',
  },

  instrument: {
    division: 'From one fine line to the next it is',
    fine: '0.001',
    coarse: '0.002',
    calibration: 'The temperature printed on it is',
    twenty: '20\u00a0°C (68\u00a0°F)',
    sixty: '15.56\u00a0°C (60\u00a0°F)',
    water: 'What it shows in plain water',
    waterHint: 'Close to 1.000. What it is off by is taken off every reading from now on.',
    celsius: 'Warmth of that water',
    scale: (division: string) => `A piece of scale with a line at every ${division}`,
  },

  waiting: {
    title: (when: string) => `Next, ${when}`,
    today: 'later today',
    tomorrow: 'tomorrow',
    inDays: (days: string) => `in ${days}`,
    meanwhile: 'Until then',
  },

  gate: {
    notYet: 'Not yet.',
    opens: {
      'proving mixed': 'It is mixed.',
      'proving dry': 'It is finished.',
      'proving gas-free': 'The gas is out.',
      'proving clear': 'It is bright.',
      'proving still': 'It is still.',
    },
    also: 'Also',
    earliest: 'Earliest',
    earliestNow: 'As soon as this is put right: time is not what it waits for.',
    tonight: 'Tonight',
    forward: 'The only way on from here is through this gate.',
    readings: 'Readings',
    lower: 'lower is later',
    limit: (limit: string) => `finished: ${limit} or lower`,
    start: (lowest: string, highest: string) => `the sheet: ${lowest} to ${highest}`,
    baseline: (baseline: string) => `unchanged from ${baseline}`,
    line: (count: number) =>
      `Number line with ${count === 1 ? 'one reading' : `${count} readings`}. The table below holds the same.`,
    beforeYeast: 'at the start',
    today: 'today',
    readAs: (read: string, sample: string) => `${read} at ${sample}`,
    wineAt: (wine: string) => `wine at ${wine}`,
    marks: {
      counted: 'counted',
      earlier: 'earlier',
      cold: 'not counted: the wine was cold',
      gassy: 'not counted: gas in the sample',
      struck: 'struck: it was wrong',
    },
    passes: (passes: number) =>
      passes === 0
        ? 'No quiet test yet: two in a row are wanted.'
        : passes === 1
          ? 'One quiet test. One more.'
          : 'Two quiet tests in a row.',
  },
  ways,

  strike: {
    button: 'that reading was wrong',
    buttonOf: (gravity: string, when: string) => `That reading was wrong: ${gravity}, ${when}`,
    reason: 'What was wrong with it?',
    hint: 'It stays in sight, struck through, and no longer counts.',
    strike: 'strike this reading',
    keep: 'leave it as it is',
  },

  end: {
    title: 'End this batch',
    how: 'How does it end?',
    ends: {
      'kept unbottled': 'Kept, without bottling',
      discarded: 'Thrown away',
      'left the guide': 'I go on without the guide',
    },
    reason: 'Why, in your words',
    hint: 'A few words: they stay in the journal for good.',
    leaving:
      'Without its readings nobody knows whether it will burst a bottle. Keep it cold, upright and contained, and drink it within weeks. Follow the maker’s sheet and your local rules.',
    end: 'end this batch',
    ended: 'This batch has come to its end.',
  },

  drawing,
};
