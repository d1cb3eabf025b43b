import type { Sachet } from '../../procedure/kit-sheet';
import type { StepId } from '../../procedure/step';
import type { Formats } from '../formats';
import { named } from './adding';
import { commands } from './commands';
import { counted } from './counted';

/** What must be within reach for each step, in the words of the maker's list. */
const within: Partial<Record<StepId, readonly string[]>> = {
  'check hydrometer': ['hydrometer and jar', 'thermometer', 'plain water'],
  'measure brim': ['first vessel', 'measuring jug'],
  'wash gear': ['cleaner and a soft cloth'],
  'mix sanitiser': ['sanitiser', 'measuring jug'],
  'sanitiser contact': ['everything that will touch the juice'],
  'pour first water': ['warm water'],
  'pour juice': ['juice bag', 'scissors'],
  'fill to mark': ['cool water'],
  'stir must': ['long spoon'],
  'stir in': ['long spoon'],
  'read start': ['hydrometer and jar', 'thermometer'],
  'take must temperature': ['thermometer'],
  'close with airlock': ['lid and airlock'],
  'look for life': ['torch'],
  'read on the way': ['hydrometer and jar', 'thermometer', 'sanitised sampler'],
  'read for the move': ['hydrometer and jar', 'thermometer', 'sanitised sampler'],
  'read towards dry': ['hydrometer and jar', 'thermometer', 'sanitised sampler'],
  'read baseline': ['hydrometer and jar', 'thermometer', 'sanitised sampler'],
  'sanitise again': ['sanitiser'],
  'add held-back water': ['water as warm as the wine'],
  'siphon off': ['siphon and hose', 'second vessel'],
  'draw reserve': ['reserve jar with its airlock'],
  'knock the surface': ['long spoon', 'cloths'],
  'stir out gas': ['long spoon', 'cloths'],
  'make room for foam': ['clean jar with a lid'],
  'take wine temperature': ['thermometer'],
  'measure gap': ['ruler'],
  'return reserve': ['reserve jar with its airlock'],
  'top up': ['something to top up with'],
  'leave to clear': ['stopper and airlock'],
  'look through the wine': ['torch', 'small print'],
  'count bottles': ['bottles and closures'],
  'sanitise bottles': ['sanitiser'],
  'fill and close': ['filler', 'corker or capper', 'gloves and eye protection'],
  'label bottles': ['labels and a pen'],
  'look at closures': ['thick towel'],
};

/** What is typed at each step that needs it. */
const touches: Partial<Record<StepId, string>> = {
  'check hydrometer': 'the hydrometer in water',
  'measure brim': 'the size of the vessel',
  'read start': 'the start gravity',
  'take must temperature': 'the warmth of the juice',
  'read on the way': 'a reading',
  'read for the move': 'a reading',
  'read towards dry': 'a reading',
  'measure wine': 'how much wine there is',
  'measure vessel': 'the size of the second vessel',
  'make room for foam': 'what you drew off',
  'warm for the gas': 'the warmth of the wine',
  'measure gap': 'the gap below the stopper',
  'take wine temperature': 'the warmth of the wine',
  'top up': 'what you topped up with',
  'read baseline': 'the baseline',
  'count bottles': 'the count of bottles',
  'count filled': 'the count of filled bottles',
};

/** A sentence begins with a capital, whatever it begins with. */
const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** Everything that the guide says by itself. The words of acts, gates and problems are theirs. */
export const guide = {
  commands,
  within,
  touches,
  sachet: named,
  /** An act in a list of acts: its name, and its sachet where it has one. */
  actName: (name: string, sachet?: Sachet) => (sachet ? `${name}: ${named(sachet)}` : name),

  frame: {
    run: (stages: string, duration: string) => `Ahead of you: ${stages}. It takes about ${duration}.`,
    reach: (things: string) => `Have within reach: ${things}.`,
    sachets: (names: string) => `From the box: ${names}.`,
    touches: (count: number, what: string) =>
      count === 1
        ? `Once you will have to type, with dry hands: ${what}.`
        : `You will have to type ${String(count)} times, with dry hands: ${what}.`,
    told: (count: number, what: string) =>
      count === 1
        ? `Once I will ask you for a number: ${what}.`
        : `I will ask you for numbers ${String(count)} times: ${what}.`,
    noTouches: 'Nothing has to be typed on the way.',
  },

  place: (place: string) => `${place}.`,
  actOf: (place: string, nth: number, of: number) => `${place}, act ${String(nth)} of ${String(of)}.`,
  backAgain: (place: string, nth: number, of: number) =>
    `You were here: ${place}, act ${String(nth)} of ${String(of)}.`,
  clockWentBack: 'The clock of this device has gone back. Set it right before you go on.',

  say: (phrase: string) => `Say: ${phrase}.`,
  sayEither: (one: string, other: string) => `Say: ${one}. Or: ${other}.`,
  youCanSay: (phrases: string) => `You can say: ${phrases}.`,

  warning: {
    goesInForGood: 'What is in the wine stays in it.',
    filledForGood: 'A bottle that is filled and closed cannot be taken back.',
    takeUp: (sachet: Sachet) =>
      `Take up ${named(sachet)}, and read the name on ${sachet.count === 1 ? 'it' : 'each'}.`,
  },
  cleanHands: 'Clean your hands first: wine is next.',
  notYet: 'Not yet.',
  earliest: (when: string) => `The earliest is ${when}.`,
  wayBack: (place: string) => `The way back is: ${place}.`,
  notDue: (act: string, when: string) => `Next: ${act} ${when}.`,
  nothingNow: 'Nothing has to be done until then.',
  ended: (end: string) => `${end}. There is nothing more to do.`,

  right: (what: string) => `${what} Right?`,
  notCounted: 'Then it does not count.',
  readBack: {
    added: (sachet: Sachet) => `${capital(named(sachet))} ${sachet.count === 1 ? 'is' : 'are'} in.`,
    filled: 'Every bottle is filled and closed.',
    early: (left: string) => `There are ${left} left. You stop here all the same.`,
    all: (names: string) => `All are there: ${names}.`,
    missing: (names: string) => `Not found: ${names}.`,
    water: (gravity: string, celsius: string) => `${capital(gravity)}, in water at ${celsius}.`,
    litres: (litres: string) => `${litres}.`,
    millimetres: (count: string) => `${count} millimetres.`,
    celsius: (celsius: string) => `${celsius}.`,
    bottles: (formats: Formats, bottles: number, closures: number, threaded: boolean) =>
      `${counted(formats, bottles, 'bottle')} and ${counted(formats, closures, 'closure')}, ${threaded ? 'with' : 'without'} a screw thread.`,
    bottled: (formats: Formats, bottles: number) => `${counted(formats, bottles, 'bottle')} filled.`,
    reading: (gravity: string, sample: string, wine: string) =>
      `${capital(gravity)}. The sample at ${sample}, the wine at ${wine}.`,
    gassy: 'With gas in the sample, so it will not count.',
    answer: (answer: string) => `${answer}.`,
    back: (place: string) => `Back to: ${place}.`,
  },

  clock: {
    begins: (duration: string) => `The clock runs: ${duration}.`,
    left: (duration: string) => `${duration} left.`,
    wereStirring: 'You were stirring.',
    ranOn: 'The clock ran on.',
    reverse: 'Now the other way.',
    half: (duration: string) => `Half way. ${duration} left.`,
    lastSeconds: 'Ten seconds.',
    timeUp: 'Time is up.',
    wasUp: (duration: string) => `Time was up ${duration} ago.`,
    longOverdue: 'That is long ago. Look at it before you go on.',
    goesOn: (phrase: string) => `I go on in ten seconds. To stop me, say: ${phrase}.`,
  },

  held: {
    paused: (duration: string) => `The clock stands, with ${duration} left.`,
    runsOn: (duration: string) => `I am quiet. The clock runs on: ${duration} left.`,
    waiting: 'I am waiting.',
  },

  back: {
    looking: (act: string) => `Before this: ${act}. It is done, and stays done.`,
    nothing: 'There is nothing before this in this stage.',
  },

  recap: {
    done: (acts: string) => `Done: ${acts}.`,
    nothingDone: 'Nothing of it is done yet.',
    notDone: (act: string) => `Not done: ${act}.`,
    inHand: (thing: string) => `In your hand: ${thing}. It is not in yet.`,
    nothingInHand: 'In your hand: nothing that goes in.',
    unanswered: (question: string) => `Not answered: ${question}`,
  },

  readCard: 'Take the sample, and type what you read, with dry hands.',
  wentWrong:
    'Stop, and put down what you hold. Nothing that you recorded is lost. Choose on the screen what happened.',
  soundGone: {
    'no voice': 'This device has no voice: read along, and listen for the tones.',
    'voice stuck': 'The voice of this device hangs: from here on, read along.',
  },
  screenMayDarken: 'This device does not let the screen stay on: touch it now and then.',
};
