import { cautions } from './cautions';

/** Where the wine is when the proof of its dryness falls into doubt. */
export type DoubtedWhen = 'before stabilising' | 'after stabilising' | 'after bottling';

type DoubtWords = { says: string; now: readonly string[] };

const stages: Record<DoubtedWhen, DoubtWords> = {
  'before stabilising': {
    says: 'Nothing has gone in yet, so nothing is lost: the question is simply open again.',
    now: [
      'Keep every stabiliser and sweetening sachet closed.',
      'Leave the wine warm, and its airlock filled with water.',
      'Take a reading today and one in two days, as if for the first time.',
    ],
  },
  'after stabilising': {
    says: 'Stabiliser is in the wine, and it does not stop yeast that is at work. The wine may still ferment; in its vessel, under an airlock, it is safe.',
    now: [
      'Do not bottle it, add nothing sweet, and never give a second dose of stabiliser.',
      'Keep it full, warm and under its airlock.',
      'Read a new baseline today, and again after a week. If nothing has moved, it is still, and the way is open.',
      'If it has fallen, let it ferment to its end first.',
    ],
  },
  'after bottling': {
    says: 'The wine is in closed bottles, and it is not shown that it was finished. Sugar that is left turns into pressure.',
    now: [
      'Do not move warm bottles. Throw a thick towel over them, and protect your eyes.',
      'Make the room cool first. Then stand them upright and contained, somewhere cold but free of frost, away from people.',
      'Look at the closures every day, before you touch anything.',
      'Open one over a sink, when it is cold. If it fizzes, all of them do: keep them cold and drink them within weeks, or pour them, opened cold, back into a vessel with an airlock.',
    ],
  },
};

/** A gate that was passed, on a reading that was struck out since. */
export const doubt = {
  title: 'In doubt',
  since: (when: string) =>
    `A reading that showed fermentation to be over was struck out on ${when}. Without it, that is not shown.`,
  stages,
  now: 'What to do now',
  card: 'See the safety card',
  guidance: cautions.guidance,
};
