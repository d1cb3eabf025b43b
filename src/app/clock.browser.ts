import type { Instant } from '../domain/unit';
import type { WallClock } from './ports';

const SECOND = 1000;

/** The page's time in the device's time zone. A hidden page may tick late, but what it reads is always the real time. */
export const wallClock = (now: () => Instant): WallClock => ({
  now() {
    const at = now();
    return { at, offsetMinutes: -new Date(at).getTimezoneOffset() };
  },
  subscribe(update) {
    const ticking = setInterval(update, SECOND);
    document.addEventListener('visibilitychange', update);
    return () => {
      clearInterval(ticking);
      document.removeEventListener('visibilitychange', update);
    };
  },
});
