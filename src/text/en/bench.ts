import type { Contents } from '../../procedure/contents';
import type { Allergen } from '../../procedure/kit-sheet';
import type { Place } from '../../procedure/phase';
import { cards } from './bench-cards';
import { gate, ways } from './bench-gate';
import { otherWays } from './other-ways';

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

/** What may be done while the next act has not come due. */
const meanwhile: Partial<Record<Place, string>> = {
  ferment:
    'Keep it warm and closed. You may look through the wall at any time, and take a reading whenever you like.',
  clear: 'Leave it still, dark and closed. Keep the airlock full of water.',
  stand: 'Leave the bottles upright, so that the corks grip before they lie down.',
  rest: 'Keep the bottles cool, dark and still. If a closure rises, say so here at once.',
};

/** The words of the screens that lead through a batch. */
export const bench = {
  pads,
  contents,
  allergens,
  ...cards,
  meanwhile,

  where: {
    label: 'Where we are',
    act: (nth: number, of: number) => `act ${nth} of ${of}`,
    edge: (nth: number, of: number) => `Stage ${nth} of ${of}`,
    gate: 'gate',
  },
  nav: { label: 'Leave this act', home: 'all batches', journal: 'journal', labels: 'labels' },
  otherWays,
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

  notHere: {
    onItsWay: 'This page is on its way.',
    wait: 'It opens by itself as soon as it has come over the network.',
    title: 'This page has not come.',
    notFetched:
      'It could not be fetched: the network is gone, or too weak. All that you recorded is kept. Look to the network, then try again.',
    again: 'try again',
  },

  waiting: {
    title: (when: string) => `Next, ${when}`,
    today: 'later today',
    tomorrow: 'tomorrow',
    inDays: (days: string) => `in ${days}`,
    meanwhile: 'Until then',
  },

  gate,
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
};
