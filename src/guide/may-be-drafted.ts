import type { GuideContext } from './guide-context';
import type { GuideReport, Stage } from './guide-events';

const ANSWERABLE: ReadonlySet<Stage> = new Set<Stage>([
  'acting',
  'dictating',
  'at a gate',
  'not due',
  'reading back',
  'time up',
]);

/**
 * Whether a card's answer can be taken now: for the act that is asked, and never past a warning. What went wrong can be
 * told at any time.
 */
export function mayBeDrafted({ situation, stage, reported }: GuideContext, report: GuideReport): boolean {
  if (!situation || reported) return false;
  if (report.type === 'mishap told') return true;
  if (!ANSWERABLE.has(stage)) return false;
  const named = 'act' in report ? report.act : undefined;
  return named === undefined || named === situation.now?.act.id;
}
