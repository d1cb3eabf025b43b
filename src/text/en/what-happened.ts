import type { Change } from '../../procedure/mishaps/mishap-rules';
import { quoted } from './counted';
import { mishaps } from './mishaps';

/** What a mishap does to the plan, in one sentence. */
const changes: Record<Change, string> = {
  nothing: 'It changes nothing in the plan.',
  'sachet in': 'The sachet counts as in, for good, and is not asked for again.',
  'sachet not in': 'The sachet counts as not in, and gets its turn again where it may go in.',
  'sachet left out': 'The sachet is left out from now on.',
  'litres lost': 'The litres are taken from the vessel; doses by volume and bottles follow.',
  'filled anew': 'What stands in the vessel is counted anew; doses by volume and bottles follow.',
  'topped up': 'The litres are added to the vessel, and what was read before is no comparison any more.',
  'pitched again': 'The days of the ferment count from this yeast on.',
  'moved early': 'The move counts as made, and is not asked for again.',
  'instrument gone': 'Readings wait until another hydrometer was checked in water.',
  'glass in wine': 'The wine is not led into bottles any more. It is advised to end the batch as discarded.',
  'stirred up': 'The wine has to be seen clear anew, on two days.',
  'bottle lost': 'There is one bottle fewer.',
  'poured back': 'The wine has to be shown to be still anew, before it is bottled again.',
};

/** The page and the read-back of "What happened?", and the digest that is copied for a helper. */
export const whatHappened = {
  title: 'What happened?',
  says: 'Nothing is so bad that it gets better by being kept quiet. Choose what comes nearest.',
  mishaps,
  changes,
  headings: {
    first: 'First of all',
    tell: 'How to tell',
    lost: 'What is lost',
    reversible: 'What is still reversible',
    now: 'What to do now',
    again: 'When to look again',
    disagree: 'Where sources disagree',
  },
  groups: {
    sachets: 'Sachets',
    vessels: 'Vessel, litres, airlock',
    fermenting: 'Warmth and yeast',
    wine: 'How it looks and smells',
    bottles: 'Bottles',
  },
  asks: {
    sachet: 'Which sachet was it?',
    litres: 'How many litres?',
    standing: 'How many litres stand there now?',
  },
  earlier: 'It happened earlier',
  when: 'When was it?',
  told: 'It is in the journal, and the plan has followed.',
  /** Read back before it counts; silence is no. */
  readBack: (title: string, change: string, sachet?: string, litres?: string): string =>
    [
      `${title}${sachet === undefined ? '' : `: ${quoted(sachet)}`}${litres === undefined ? '' : `, ${litres}`}.`,
      change,
    ].join(' '),
  leads: (place: string): string => `From here the batch goes back to ${quoted(place)}.`,
  stays: 'The batch stays where it is.',
  tellIt: 'tell it',
  notThis: 'not this',
  notByVoice: 'This changes what is in the wine, so it is told by a pad or a key, never by voice.',
  lookedAgain: {
    title: 'Look again',
    about: (what: string): string => `Look again: ${what}.`,
    well: 'all is well',
    notYet: 'not yet',
    since: (when: string): string => `It is due since ${when}.`,
    on: (when: string, what: string): string => `Look again on ${when}: ${what}.`,
  },
  takeBack: {
    title: 'Told by mistake?',
    reason: 'Why is it taken back?',
    hint: 'What is in the wine stays in; this changed nothing there. The reason stays in the journal.',
    confirm: 'take it back',
  },
  joining: {
    title: 'Join with a batch that is running already',
    says: 'Tell what went in and when. What you do not know counts as in where it is a dose, and as not shown where it is a proof: the gates ask for it again.',
    since: 'When were juice and water mixed?',
    reached: 'How far has it come?',
    sachet: { in: 'it is in', notIn: 'it is still full', unknown: 'I do not know' },
    day: 'On which day, if you know?',
    litres: 'How many litres stand there?',
    filled: 'How many bottles are there?',
    join: 'join with it so',
    begin: 'begin at the box after all',
    choose: 'Choose',
    answer: 'This is needed before anything can be planned.',
    past: 'Readings from before can be typed in next, with their days. The last one always has to be a new one.',
    sweetened:
      'For a wine that is sweetened already, only readings from before the pack can show that it was dry. Without them it can be kept, but not led into bottles.',
  },
};
