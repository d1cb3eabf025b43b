import type { Unsafe } from '../../domain/problem';
import type { End, Gate, Place } from '../../procedure/phase';
import type { Formats } from '../formats';

const days = (atMost: number, f: Formats): string => (atMost === 0 ? 'not at all' : `for ${f.days(atMost)}`);

/** Why a batch cannot be left for so long: what is at stake, how long would do, and what to do instead. */
export const unsafe: Record<Unsafe, (atMostDays: number, formats: Formats) => string> = {
  'away-ends-before-it-begins': () =>
    'The day of return must come after the day of leaving, and must not be past. Choose both again.',
  'yeast-is-starting': (_, f) =>
    `Until ${f.dayNumber(3)} after the yeast somebody must see it start, and keep the foam in. Leave later, or add the yeast only when you can stay.`,
  'ferment-too-long': (atMost, f) =>
    `A ferment may be left ${days(atMost, f)}: after that no gas covers the wine any more. Come back by then, or ask someone to look at the airlock and take a reading.`,
  'finished-unstabilised': (atMost, f) =>
    `Finished wine without stabiliser may be left ${days(atMost, f)}: nothing guards it against air. Come back by then, or go on with it before you leave.`,
  'between-stabilising-and-fining': (atMost, f) =>
    `Between stabiliser and finings the wine may be left ${days(atMost, f)}: they belong together. Finish fining and topping up first, or leave later.`,
  'clearing-too-long': (atMost, f) =>
    `Clearing wine may be left ${days(atMost, f)}: the airlock dries out. Come back by then, or ask someone to fill it.`,
  'sweetened-too-long': (atMost, f) =>
    `Sweetened wine may wait ${days(atMost, f)} outside its bottles, full and under its airlock. Come back by then, or bottle it before you leave.`,
  'bottles-open': (atMost, f) =>
    atMost === 0
      ? 'Clean bottles wait for their wine, and filled ones may never stand open. Fill, close and count them all before you leave.'
      : `The wine may wait for its bottles ${days(atMost, f)}; then it must be shown to be still again. Come back by then, or bottle it before you leave.`,
};

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
  open: 'I am away for a while',
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
