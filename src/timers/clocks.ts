import type { Instant } from '../domain/unit';

/** One look at both clocks of a device: the wall's, which can be set, and the page's own, which only runs forward. */
export type Look = { wall: Instant; monotonic: number };

/** Where both clocks agreed last. `skew` is by how much the wall clock was set since, and is taken off what it shows. */
export type Anchor = Look & { skew: number };

/** What both clocks together say. `odd` where they disagree, with the reason that was found. */
export type Agreed = { now: Instant; anchor: Anchor; odd?: 'slept' | 'clock set' };

/** A disagreement of more than this is no drift. Milliseconds. */
const DRIFT = 2000;

/**
 * What time it is, by two clocks that may disagree. The page's own stops while a device sleeps: if the page was out of
 * sight since the last look, the wall is right. If it was in sight all the time, someone set the wall clock: the page's
 * own goes on from where it was.
 */
export function agree(anchor: Anchor, { wall: shown, monotonic }: Look, outOfSight: boolean): Agreed {
  const expected = Math.round(anchor.wall + monotonic - anchor.monotonic) as Instant;
  const wall = (shown - anchor.skew) as Instant;
  if (Math.abs(wall - expected) <= DRIFT) return { now: expected, anchor };
  return outOfSight
    ? { now: wall, anchor: { wall, monotonic, skew: anchor.skew }, odd: 'slept' }
    : { now: expected, anchor: { wall: expected, monotonic, skew: shown - expected }, odd: 'clock set' };
}

/** Hours after a deadline beyond which nobody believes that someone is still stirring. */
const HOURS_OVERDUE = 3;

/** After a reload only the wall clock is left. Whether it can be believed, or the maker must be asked. */
export function afterReload(
  lastKnown: Instant,
  now: Instant,
  deadline?: Instant,
): 'believe' | 'went back' | 'long overdue' {
  if (now < lastKnown) return 'went back';
  return deadline !== undefined && secondsLate(deadline, now) > HOURS_OVERDUE * 3600
    ? 'long overdue'
    : 'believe';
}

/** Whole seconds since a deadline; 0 before it. */
export const secondsLate = (deadline: Instant, now: Instant): number =>
  Math.max(0, Math.floor((now - deadline) / 1000));
