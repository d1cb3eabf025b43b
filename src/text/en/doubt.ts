import type { DoubtedGate, DoubtedWhen } from '../../procedure/doubts';
import { cautions } from './cautions';

/** `brief` is what stays in sight while the rest is folded: what must not be done, or that nothing is lost. */
type DoubtWords = { brief: string; says: string; now: readonly string[] };

const stages: Record<DoubtedWhen, DoubtWords> = {
  'before the yeast': {
    brief: 'Stir and read the start again.',
    says: 'The yeast is not in yet, so nothing is lost: the start is simply not known again.',
    now: ['Stir once more by the timer, and read the start gravity before the yeast goes in.'],
  },
  'after the yeast': {
    brief: 'The wine is not in danger.',
    says: 'The wine is not in danger. How strong it becomes cannot be told any more, nor how fast it goes; when it is finished is judged as before.',
    now: ['Go on with what is shown.', 'Leave the strength off the label, or write “about” before it.'],
  },
  'before stabilising': {
    brief: 'Keep every sachet closed.',
    says: 'Nothing has gone in yet, so nothing is lost: the question is simply open again.',
    now: [
      'Keep every stabiliser and sweetening sachet closed.',
      'Leave the wine warm, and its airlock filled with water.',
      'Take a reading today and one in two days, as if for the first time.',
    ],
  },
  'after stabilising': {
    brief: 'Do not bottle or sweeten it.',
    says: 'Stabiliser is in the wine, and it does not stop yeast that is at work. The wine may still ferment; in its vessel, under an airlock, it is safe.',
    now: [
      'Do not bottle it, add nothing sweet, and never give a second dose of stabiliser.',
      'Keep it full, warm and under its airlock.',
      'Read a new baseline today, and again after a week. If nothing has moved, it is still, and the way is open.',
      'If it has fallen, let it ferment to its end first.',
    ],
  },
  'without stabiliser': {
    brief: 'Do not bottle or sweeten it.',
    says: 'No stabiliser guards this wine, so it may still ferment; in its vessel, under an airlock, it is safe.',
    now: [
      'Do not bottle it, and add nothing sweet.',
      'Keep it full, warm and under its airlock.',
      'Read a new baseline today, and again after a week. If nothing has moved, it is still, and the way is open.',
      'If it has fallen, let it ferment to its end first.',
    ],
  },
  'before bottling': {
    brief: 'Fill no bottle.',
    says: 'The wine is not bottled yet, so nothing is lost: the question is simply open again.',
    now: [
      'Fill no bottle. If some are filled already, stand them upright and contained, somewhere cold.',
      'Keep the wine full and under its airlock.',
      'Take a reading, and make the gas test twice, as the gate asks.',
    ],
  },
  'after bottling': {
    brief: 'Do not move warm bottles: throw a thick towel over them.',
    says: 'The wine is in closed bottles, and it is not shown that it was finished. Sugar that is left turns into pressure.',
    now: [
      'Do not move warm bottles. Throw a thick towel over them, and protect your eyes.',
      'Make the room cool first. Then stand them upright and contained, somewhere cold but free of frost, away from people.',
      'Look at the closures every day, before you touch anything.',
      'Open one over a sink, when it is cold. If it fizzes, all of them do: keep them cold and drink them within weeks, or pour them, opened cold, back into a vessel with an airlock.',
    ],
  },
};

const since: Record<DoubtedGate, (when: string) => string> = {
  'proving mixed': (when) =>
    `The reading that showed the juice to be mixed was struck out on ${when}. Without it, that is not shown.`,
  'proving dry': (when) =>
    `A reading that showed fermentation to be over was struck out on ${when}. Without it, that is not shown.`,
  'proving still': (when) =>
    `A reading that showed the wine to be still was struck out on ${when}. Without it, that is not shown.`,
};

/** A gate that was passed, on a reading that was struck out since. */
export const doubt = {
  title: 'In doubt',
  of: (gate: string) => `In doubt: ${gate}`,
  since,
  struck: (gravity: string, day: string) => `Struck out: ${gravity} (${day}).`,
  instead: (gravity: string, day: string) => `What stands: ${gravity} (${day}).`,
  nothingInstead: 'No other reading stands in its place.',
  stages,
  now: 'What to do now',
  card: 'See the safety card',
  guidance: cautions.guidance,
};
