import type { GuideContext } from './guide-context';

/** What the guide waits for, to be shown as a shape and a word. */
export type Awaiting =
  'nothing' | 'saying' | 'the maker' | 'ready' | 'yes or no' | 'stirring' | 'the clock' | 'time up' | 'go on';

/** What a screen shows of the guide: is it speaking, and what does it wait for? */
export function awaiting({ stage, saying, situation, reported }: GuideContext): Awaiting {
  if (stage === 'resting' || reported) return 'nothing';
  if (stage === 'timing') return situation?.now?.act.kind === 'stir' ? 'stirring' : 'the clock';
  if (stage === 'time up') return 'time up';
  if (saying) return 'saying';
  if (stage === 'warning') return 'ready';
  if (stage === 'reading back' || situation?.asks) return 'yes or no';
  if (stage === 'held' || stage === 'looking back') return 'go on';
  return stage === 'not due' ? 'nothing' : 'the maker';
}
