import type { Ticker } from './alarms';
import address from './ticker.worker?worker&url';

const EVERY = 250;

/**
 * Ticks four times a second from a worker, and whenever the page comes back into sight. `trusted` makes an address of
 * our own one that the page's policy lets a worker be made of. Without a worker it ticks by itself, less surely.
 */
export function workerTicker(trusted: (address: string) => string): Ticker {
  return {
    subscribe(tick) {
      const stop = worker(trusted(address), tick) ?? interval(tick);
      document.addEventListener('visibilitychange', tick);
      window.addEventListener('pageshow', tick);
      document.addEventListener('resume', tick);
      return () => {
        stop();
        document.removeEventListener('visibilitychange', tick);
        window.removeEventListener('pageshow', tick);
        document.removeEventListener('resume', tick);
      };
    },
  };
}

function worker(trustedAddress: string, tick: () => void): (() => void) | undefined {
  let stop: () => void;
  try {
    const made = new Worker(trustedAddress, { type: 'module' });
    stop = () => made.terminate();
    made.addEventListener('message', tick);
    made.addEventListener('error', () => {
      stop();
      stop = interval(tick);
    });
  } catch {
    return undefined;
  }
  return () => stop();
}

function interval(tick: () => void): () => void {
  const ticking = setInterval(tick, EVERY);
  return () => clearInterval(ticking);
}
