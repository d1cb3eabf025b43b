import type { Moment } from '../../src/domain/calendar';
import type { Instant } from '../../src/domain/unit';
import { builtInSheets } from '../../src/procedure/kits';
import type { KitSheet } from '../../src/procedure/kit-sheet';
import type { BatchEvent } from '../../src/workflow/batch-event';
import type { Journal } from '../../src/workflow/journal';
import { type JournalPorts, type Told } from '../../src/workflow/journal';
import type { JournalStore, OtherTabs } from '../../src/workflow/journal-store';
import type { Result } from '../../src/domain/result';

export const BEGUN: Moment = { at: Date.UTC(2031, 4, 3, 15) as Instant, offsetMinutes: 120 };

/** A device: its clock, set by hand, and the tabs on it, which may or may not hear of each other. */
export class Device {
  now: Moment = BEGUN;
  readonly #listeners = new Set<{ tab: object; heard: (batch: string) => void }>();
  #ids = 0;

  /** One tab's ports. A deaf tab hears of nothing that the others write. */
  tab(store: JournalStore, { deaf = false } = {}): JournalPorts & { newId: () => string } {
    return {
      store,
      clock: () => this.now,
      exclusively: (_, work) => work(),
      otherTabs: this.#otherTabs(deaf),
      newId: () => `copy-${String((this.#ids += 1))}`,
    };
  }

  #otherTabs(deaf: boolean): OtherTabs {
    const tab = {};
    return {
      tell: (batch) => {
        for (const other of this.#listeners) if (other.tab !== tab) other.heard(batch);
      },
      listen: (heard) => {
        const listener = { tab, heard };
        if (!deaf) this.#listeners.add(listener);
        return () => this.#listeners.delete(listener);
      },
    };
  }

  /** Tells a journal again what a maker did, each at its own time. */
  async relive(journal: Journal, events: readonly BatchEvent[]): Promise<void> {
    for (const event of events) {
      this.now = { at: event.at, offsetMinutes: event.offsetMinutes };
      const problem = await journal.report(asTold(event));
      if (problem) throw new Error(`${event.type}: ${JSON.stringify(problem)}`);
    }
  }
}

/** An event without its stamp, as a screen would report it. */
export const asTold = ({ at: _at, offsetMinutes: _offset, ...told }: BatchEvent): Told => told;

export const sheet = builtInSheets[0] as KitSheet;

/** The batch that the tests begin, in words of its own. */
export const batch = (id = 'one', of: KitSheet = sheet) => ({
  id,
  name: `Batch ${id}`,
  freeHour: 18,
  sheet: of,
});

/** The value of a result that must be one. */
export function sure<Value>(result: Result<Value>): Value {
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value;
}

/** A batch as a whole: what must be equal wherever it is read. */
export const whole = ({ header, events, snapshot, mismatch }: Journal) => ({
  header,
  events,
  snapshot,
  mismatch,
});
