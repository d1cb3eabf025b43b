import type { Moment } from '../domain/calendar';
import type { Instant } from '../domain/unit';
import type { WallClock } from './ports';

const SECOND = 1000;

/** The device's clock and its time zone. A hidden page may tick late, but what it reads is always the real time. */
export const wallClock: WallClock = {
  now,
  subscribe(update) {
    const ticking = setInterval(update, SECOND);
    document.addEventListener('visibilitychange', update);
    return () => {
      clearInterval(ticking);
      document.removeEventListener('visibilitychange', update);
    };
  },
};

function now(): Moment {
  const at = Date.now() as Instant;
  return { at, offsetMinutes: -new Date(at).getTimezoneOffset() };
}
