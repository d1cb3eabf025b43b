import type { Instant } from '../domain/unit';

/** Rings at instants, never after spans: a deadline survives sleep, and rings late rather than never. */
export type Alarms = {
  now: () => Instant;
  /** Gives back how to call it off. */
  at: (due: Instant, ring: () => void) => () => void;
};

/** Says every so often that time has passed. */
export type Ticker = { subscribe: (tick: () => void) => () => void };

type Alarm = { due: Instant; ring: () => void };

/** Alarms kept by a ticker: at each tick all that are due ring, in the order in which they fell due. */
export function tickedAlarms(now: () => Instant, ticker: Ticker): Alarms & { stop: () => void } {
  const set = new Set<Alarm>();
  const ringDue = () => {
    const at = now();
    for (const alarm of [...set].filter(({ due }) => due <= at).toSorted((a, b) => a.due - b.due)) {
      // One that rang just before may have called this one off.
      if (set.delete(alarm)) alarm.ring();
    }
  };
  const stop = ticker.subscribe(ringDue);
  return {
    now,
    stop,
    at(due, ring) {
      const alarm = { due, ring };
      set.add(alarm);
      return () => {
        set.delete(alarm);
      };
    },
  };
}
