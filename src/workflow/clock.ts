import type { Problem } from '../domain/problem';
import type { Instant } from '../domain/unit';
import type { Clock } from '../procedure/facts';

/** Whole seconds left on a clock, rounded up; negative is how late it is. */
export const timeLeft = (clock: Clock, at: Instant): number =>
  clock.running ? Math.ceil((clock.endsAt - at) / 1000) : clock.leftSeconds;

/** A clock that starts now. */
export const started = (seconds: number, at: Instant): Clock => ({
  running: true,
  startedAt: at,
  seconds,
  endsAt: (at + seconds * 1000) as Instant,
});

/** The clock held: only what is left is known from here. */
export const paused = (clock: Clock, at: Instant): Clock => ({
  running: false,
  startedAt: clock.startedAt,
  seconds: clock.seconds,
  leftSeconds: Math.max(0, timeLeft(clock, at)),
});

/** The clock going on with what was left. */
export const resumed = (clock: Clock, at: Instant): Clock => ({
  running: true,
  startedAt: clock.startedAt,
  seconds: clock.seconds,
  endsAt: (at + timeLeft(clock, at) * 1000) as Instant,
});

/** More time on the clock, from now where it has already run out. */
export function extended(clock: Clock, more: number, at: Instant): Clock {
  const seconds = clock.seconds + more;
  return clock.running
    ? { ...clock, seconds, endsAt: (Math.max(clock.endsAt, at) + more * 1000) as Instant }
    : { ...clock, seconds, leftSeconds: clock.leftSeconds + more };
}

/** Seconds that a clock has really run. */
export const secondsRun = (clock: Clock, at: Instant): number =>
  clock.seconds - Math.max(0, timeLeft(clock, at));

/** Why a clock cannot be told to do something; nothing when it can. */
export function clockRefusal(
  clock: Clock | undefined,
  order: 'start' | 'pause' | 'resume' | 'extend',
): Problem | undefined {
  if (order === 'start') return clock ? { code: 'clock-already-running' } : undefined;
  if (!clock || (order === 'pause' && !clock.running)) return { code: 'clock-not-running' };
  return order === 'resume' && clock.running ? { code: 'clock-already-running' } : undefined;
}
