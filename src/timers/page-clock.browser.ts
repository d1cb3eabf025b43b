import type { Instant } from '../domain/unit';
import type { ClockDevice } from './page-clock';

/** Both clocks of this device. Frozen pages come back by `resume` or `pageshow`, hidden ones by `visibilitychange`. */
export function clockDevice(): ClockDevice {
  let away = document.visibilityState === 'hidden';
  const goAway = () => {
    away = true;
  };
  document.addEventListener('visibilitychange', goAway);
  document.addEventListener('freeze', goAway);
  document.addEventListener('resume', goAway);
  window.addEventListener('pageshow', goAway);
  return {
    look: () => ({ wall: Date.now() as Instant, monotonic: performance.now() }),
    wasOutOfSight() {
      const was = away;
      away = document.visibilityState === 'hidden';
      return was;
    },
  };
}
