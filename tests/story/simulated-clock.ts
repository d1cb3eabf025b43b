import type { Instant } from '../../src/domain/unit';

type Alarm = { due: number; ring: () => void; order: number };

/** Time that passes only when told to. Alarms ring in the order in which they fall due; promises settle in between. */
export class SimulatedClock {
  #now: number;
  #set: Alarm[] = [];
  #order = 0;

  constructor(at = 0) {
    this.#now = at;
  }

  now = (): Instant => this.#now as Instant;

  after = (milliseconds: number, ring: () => void): (() => void) => {
    const alarm = { due: this.#now + milliseconds, ring, order: (this.#order += 1) };
    this.#set.push(alarm);
    return () => {
      this.#set = this.#set.filter((each) => each !== alarm);
    };
  };

  /** Rings again and again. */
  every(milliseconds: number, ring: () => void): () => void {
    let stop: () => void;
    const again = () => {
      stop = this.after(milliseconds, again);
      ring();
    };
    stop = this.after(milliseconds, again);
    return () => stop();
  }

  async pass(milliseconds: number): Promise<void> {
    const end = this.#now + milliseconds;
    await settled();
    for (let next = this.#next(end); next; next = this.#next(end)) {
      this.#now = Math.max(this.#now, next.due);
      this.#set = this.#set.filter((each) => each !== next);
      next.ring();
      await settled();
    }
    this.#now = Math.max(this.#now, end);
  }

  /** Time passes and nothing rings: the device slept. What fell due rings when time is passed again. */
  sleep(milliseconds: number): void {
    this.#now += milliseconds;
  }

  #next(end: number): Alarm | undefined {
    const [first] = this.#set
      .filter(({ due }) => due <= end)
      .toSorted((a, b) => a.due - b.due || a.order - b.order);
    return first;
  }
}

/** As many turns as the promises of one line need to settle. */
async function settled(): Promise<void> {
  for (let turn = 0; turn < 12; turn += 1) await Promise.resolve();
}
