import type { Problem } from '../domain/problem';
import type { Shelved } from '../ui/opening/shelved';
import type { BatchHeader } from '../workflow/batch-header';
import type { JournalPorts } from '../workflow/journal';
import { orProblem } from '../workflow/or-problem';
import { openJournal } from './open-journal';

/** All batches of this device as they stand. Each is read to its end, so that one that cannot be is found here. */
export class Shelf {
  readonly #ports: JournalPorts;
  #batches = $state.raw<readonly Shelved[]>();
  #problem = $state.raw<Problem>();

  constructor(ports: JournalPorts) {
    this.#ports = ports;
  }

  /** Nothing until they have been looked up. */
  get batches(): readonly Shelved[] | undefined {
    return this.#batches;
  }

  get problem(): Problem | undefined {
    return this.#problem;
  }

  async load(): Promise<void> {
    this.#problem = await orProblem<Problem | undefined>(
      async () => {
        const headers = await this.#ports.store.headers();
        this.#batches = await Promise.all(headers.map((header) => this.#shelved(header)));
        return undefined;
      },
      (problem) => problem,
    );
    this.#batches ??= [];
  }

  async #shelved(header: BatchHeader): Promise<Shelved> {
    const opened = await openJournal(this.#ports, header.id);
    if (!opened.ok) return { header, facts: undefined, problem: opened.problem };
    const { snapshot, mismatch, header: standing } = opened.value;
    opened.value.close();
    return { header: standing, facts: snapshot.context.facts, problem: mismatch };
  }
}
