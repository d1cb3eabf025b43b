import { timeLeft } from '../workflow/clock';
import type { GuideContext } from './guide-context';
import type { Stage } from './guide-events';
import { isOver } from './situation-of';
import { warningOf } from './warning';

/** What the guide is to be about, from what it knows. Being held and looking back are left by "go on" alone. */
export function stageOf({ situation, draft, dictation, heeded, at }: GuideContext): Stage {
  if (!situation) return 'resting';
  const { place, gate, now, clock } = situation;
  if (draft) return 'reading back';
  if (dictation) return 'dictating';
  if (gate) return 'at a gate';
  if (isOver(place) || !now) return 'not due';
  if (clock) return clock.running ? (timeLeft(clock, at) > 0 ? 'timing' : 'time up') : 'held';
  const warning = warningOf(situation);
  return warning === undefined || heeded.includes(warning) ? 'acting' : 'warning';
}
