import type { Clock } from '../../procedure/facts';

export type ClockState = 'idle' | 'running' | 'paused' | 'over';

/** What a clock is doing, from its deadline alone. */
export function clockState(clock: Clock | undefined, left: number): ClockState {
  if (!clock) return 'idle';
  if (left <= 0) return 'over';
  return clock.running ? 'running' : 'paused';
}
