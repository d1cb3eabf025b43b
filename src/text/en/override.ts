import type { HeldCode } from '../tonight-for';
import { quoted } from './counted';
import { leaveOut } from './leave-out';
import { sugarTest } from './sugar-test';

/** The clauses that yield to a typed reason: those of `YIELDS`, as the test beside holds them together. */
export type YieldingCode = Extract<
  HeldCode,
  | 'too-soon'
  | 'gassy'
  | 'gas-not-tested'
  | 'clearing-too-short'
  | 'cloudy'
  | 'not-looked-at'
  | 'fining-too-cold'
  | 'gap-too-wide'
>;

/** Going on in spite of a clause: what it means for the wine, what is asked, and what stays on the batch. */
type InSpiteOf = { means: string; reason: string; afterwards: (reason: string) => string };

const because = (what: string) => (reason: string) => `${what} The reason given: ${quoted(reason)}.`;

const clauses: Record<YieldingCode, InSpiteOf> = {
  'too-soon': {
    means:
      'The readings still have to agree, low and warm; only the days give way. Yeast tidies up after itself in those days: without them the wine may smell of it, and clear later.',
    reason: 'Why before the sheet’s day?',
    afterwards: because('It was judged finished before the sheet’s day.'),
  },
  gassy: {
    means:
      'Gas that stays in holds sediment up: the wine clears late, and it prickles. Before bottling the gas test comes again, and there it yields to nothing.',
    reason: 'Why on, with gas in it?',
    afterwards: because('It went on with gas in it.'),
  },
  'gas-not-tested': {
    means:
      'Nobody knows then whether the gas is out. If it is not, the wine clears late; before bottling the gas test comes again, and there it yields to nothing.',
    reason: 'Why on, without both tests?',
    afterwards: because('It went on without both gas tests.'),
  },
  'clearing-too-short': {
    means:
      'What has not sunk yet sinks in the bottle. The wine is safe to drink, and there will be sediment to pour it off from.',
    reason: 'Why before the clearing days are over?',
    afterwards: because('It cleared for fewer days than the sheet asks for.'),
  },
  cloudy: {
    means:
      'Wine does not clear in the bottle. It is safe to drink, looks dull, and leaves a layer on the glass.',
    reason: 'Why bottle it cloudy?',
    afterwards: because('It was cloudy when it went on.'),
  },
  'not-looked-at': {
    means:
      'A thin haze shows on the second day, or in another light. What is missed now stays in the bottle.',
    reason: 'Why without looking on two days?',
    afterwards: because('It was not seen clear on two days.'),
  },
  'fining-too-cold': {
    means:
      'Finings work badly in cold wine, and they cannot be given twice. It may stay hazy, and clear only with time.',
    reason: 'Why fine it cold?',
    afterwards: because('It was fined colder than the sheet asks for.'),
  },
  'gap-too-wide': {
    means:
      'Air above the wine turns it brown and flat, a little more each week. Shorten the wait, and drink it young.',
    reason: 'Why leave the gap as it is?',
    afterwards: because('It cleared with more air above it than the sheet asks for.'),
  },
};

/** The sentence that stays on the batch; for a clause that no longer yields, its code in words. */
const afterwards = (clause: string, reason: string): string =>
  clause in clauses
    ? clauses[clause as YieldingCode].afterwards(reason)
    : because(`It went on in spite of “${clause.replaceAll('-', ' ')}”.`)(reason);

/** Everything about going on in spite of a clause, and about the clauses where that is not possible. */
export const override = {
  title: 'Go on in spite of this',
  severally: 'Why go on in spite of all this?',
  clauses,
  afterwards,
  hint: 'In your own words, typed. It stays on the batch for good, and goes on its label sheet.',
  goOn: 'go on all the same',
  wait: 'wait after all',
  notNeeded: 'Nothing holds the wine up here any more. Leave this page, and go on.',
  neverByVoice: 'A voice can be misheard: this is typed, never said.',
  onTheLabel: 'Went on in spite of',

  /** What yields to nothing, and why. */
  never: {
    title: 'Why not this one?',
    leave: 'leave it shut',
    later:
      'This one gives way to a reason too, though not yet: first the rounds of stirring, then warmth, then the test once more. If the gas is still there after that, a reason will do.',
    says: 'Days, looks and comfort give way to a good reason. What would hurt someone, or lose the wine, gives way to none: a reason changes nothing in the bottle.',
    rows: [
      {
        what: 'The limit of dryness',
        why: 'It gives way to evidence only: a sugar test of 2 grams in a litre or less.',
      },
      {
        what: 'Sorbate into a wine that ferments',
        why: 'It does not stop the yeast. The dose is lost, and the sugar is still there.',
      },
      {
        what: 'Sweetening before every stabiliser is in',
        why: 'Sugar that nothing guards ferments in the bottle.',
      },
      {
        what: 'Bottling while the gravity falls',
        why: 'A falling gravity is gas to come, and the bottle is closed.',
      },
      {
        what: 'Bottling on a failed gas test',
        why: 'Gas that is in the wine already pushes at the cork from the first warm day.',
      },
    ],
    alone:
      'Who will go on alone all the same can leave the guide. The batch says so from then on, and shows the safety card.',
  },

  leaveOut,
  sugarTest,
};
