import type { Contents } from '../../procedure/contents';
import type { Allergen } from '../../procedure/kit-sheet';
import { firstCards } from './first-cards';
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

/** The words of the screens that lead through a batch. */
export const bench = {
  pads,
  contents,
  allergens,
  ...firstCards,

  where: {
    label: 'Where we are',
    act: (nth: number, of: number) => `act ${nth} of ${of}`,
    edge: (nth: number, of: number) => `Stage ${nth} of ${of}`,
    gate: 'gate',
  },
  ending: 'End this batch',
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
};
