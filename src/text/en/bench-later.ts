import type { Place } from '../../procedure/phase';
import { cards } from './bench-cards';
import { gate, ways } from './bench-gate';

/** What may be done while the next act has not come due. */
const meanwhile: Partial<Record<Place, string>> = {
  ferment:
    'Keep it warm and closed. You may look through the wall at any time, and take a reading whenever you like.',
  clear: 'Leave it still, dark and closed. Keep the airlock full of water.',
  stand: 'Leave the bottles upright, so that the corks grip before they lie down.',
  rest: 'Keep the bottles cool, dark and still. If a closure rises, say so here at once.',
};

/** The words of the bench after its first act: cards, gates, waiting, striking, ending. */
export const benchLater = {
  ...cards,
  gate,
  ways,
  meanwhile,

  waiting: {
    title: (when: string) => `Next, ${when}`,
    today: 'later today',
    tomorrow: 'tomorrow',
    inDays: (days: string) => `in ${days}`,
    meanwhile: 'Until then',
  },

  strike: {
    button: 'that reading was wrong',
    buttonOf: (gravity: string, when: string) => `That reading was wrong: ${gravity}, ${when}`,
    reason: 'What was wrong with it?',
    hint: 'It stays in sight, struck through, and no longer counts.',
    strike: 'strike this reading',
    keep: 'leave it as it is',
  },

  end: {
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
