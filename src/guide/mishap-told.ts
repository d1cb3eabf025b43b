import { takeUp, type Effect } from './guide-actions';
import type { GuideContext } from './guide-context';
import { whatHappened } from './guide-text';
import type { Situation } from './situation';

/** What went wrong is being read back, or is on its way to the batch. The guide holds still until "go on". */
export const isMishapDrafted = ({ draft }: GuideContext): boolean => draft?.type === 'mishap told';
export const isMishapTold = ({ sent, reported }: GuideContext): boolean =>
  reported && sent?.type === 'mishap told';

/** The batch took it: what can hurt is said first, then what to do now. */
export function takeUpMishap(context: GuideContext, situation: Situation): Effect {
  const { sent, words } = context;
  if (sent?.type !== 'mishap told') return takeUp(context, situation);
  const { cautions = [], now } = whatHappened(words).mishaps[sent.mishap];
  const { context: taken, out } = takeUp(context, situation);
  return { context: { ...taken, before: [...cautions, ...now] }, out };
}
