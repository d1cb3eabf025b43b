import type { End, Gate, Place } from '../../procedure/phase';
import type { Formats } from '../formats';
import { unsafe } from './unsafe-to-leave';

const CLOSED_BOX = ['Leave the box closed, cool and out of the sun.', 'Look at the date on the yeast.'];
const FINISH_IT =
  'Do not leave in the middle of this: go on until the juice is mixed, closed and waiting for its yeast.';
const FERMENTING = [
  'See that the foam has room, and that hose and airlock are free.',
  'Fill the airlock with fresh water.',
  'Make sure that it stays as warm as its yeast wants, by night too.',
];
const FULL_AND_CLOSED = [
  'See that the vessel is full to below its stopper.',
  'Fill the airlock with fresh water, and have someone fill it once a month.',
  'Leave it dark, cool and still.',
];
const UNSTABILISED = [
  'Do not start on the stabilisers.',
  'Close the wine in a full vessel, under a filled airlock.',
  'On your return it is proven dry again, before anything goes in.',
];
const BEGUN = [
  'If a stabiliser is in already, go on to the end of fining and topping up first.',
  'If none is in, leave all of them closed, and the wine full under its airlock.',
];
const BOTTLES = [
  'Close every bottle that you have filled.',
  'What is not filled yet stays in its full vessel, under its airlock.',
];
const LAID_DOWN = ['Leave the bottles cool, dark and contained.', 'Look over the closures before you leave.'];

/** What to do before leaving, by where the batch stands. */
const before: Record<Exclude<Place, End>, readonly string[]> = {
  prepare: CLOSED_BOX,
  clean: CLOSED_BOX,
  sanitise: [...CLOSED_BOX, 'What is sanitised now must be sanitised again.'],
  mix: [FINISH_IT],
  'proving mixed': [FINISH_IT],
  pitch: ['Keep the yeast closed. Mixed juice without yeast keeps for a day at most.'],
  ferment: FERMENTING,
  'proving dry': UNSTABILISED,
  rack: UNSTABILISED,
  stabilise: BEGUN,
  degas: BEGUN,
  'proving gas-free': BEGUN,
  fine: BEGUN,
  'top up': BEGUN,
  clear: FULL_AND_CLOSED,
  'proving clear': FULL_AND_CLOSED,
  'proving still': FULL_AND_CLOSED,
  bottle: BOTTLES,
  stand: ['Leave the bottles upright, contained and cool. Lying down can wait.'],
  label: LAID_DOWN,
  'wash up': ['Wash up before you leave: what has dried on is hard to get off.', ...LAID_DOWN],
  rest: LAID_DOWN,
};

/** The gate that asks again on return. */
const again: Record<Gate, string> = {
  'proving mixed': 'On your return: stir by the timer, and read the start gravity again.',
  'proving dry': 'On your return: take a reading first. Whether fermentation is over is asked again.',
  'proving gas-free': 'On your return: make the shake test again before you go on.',
  'proving clear': 'On your return: look through the wine again, in the same light.',
  'proving still':
    'On your return: take a reading, and test for gas. Whether the wine is still is asked again before any bottle.',
};

/** Leaving a batch alone for a while. */
export const away = {
  title: 'I am away',
  from: 'Away from',
  until: 'Back on',
  hint: 'Whole days. What falls due meanwhile waits for your return.',
  unanswered: 'Choose both days, then it can be said whether that is safe.',
  plan: 'plan it so',
  stay: 'do not plan it',
  atMost: (atMostDays: number, f: Formats) =>
    atMostDays === 0
      ? 'Where it stands now it cannot be left alone overnight.'
      : `Where it stands now it can be left alone for ${f.days(atMostDays)}, usually.`,
  noLimit: 'Where it stands now it can wait as long as you like.',
  planned: (from: string, until: string) => `Away from ${from} until ${until}.`,
  moved: (when: string) => `The next act is moved to ${when}.`,
  beforeLeaving: 'Before you leave',
  before,
  onReturn: 'When you are back',
  again,
  unsafe,
};
