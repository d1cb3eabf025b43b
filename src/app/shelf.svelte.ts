import type { DeviceProblem } from '../domain/problem';
import type { Text } from '../text/text';
import type BatchCard from '../ui/opening/BatchCard.svelte';
import type { Shelved } from '../ui/opening/shelved';
import type { BatchHeader } from '../workflow/batch-header';
import type { JournalPorts } from '../workflow/journal';
import { orProblem } from '../workflow/or-problem';
import { fetchJournal, openJournal } from './open-journal';
import { wholeText } from './texts';

/** All batches of this device as they stand. Each is read to its end, so that one that cannot be is found here. */
export class Shelf {
  readonly #ports: JournalPorts;
  #batches = $state.raw<readonly Shelved[]>();
  #words = $state.raw<Text>();
  #card = $state.raw<typeof BatchCard>();
  #notFetched = $state.raw(false);
  #problem = $state.raw<DeviceProblem>();

  constructor(ports: JournalPorts) {
    this.#ports = ports;
  }

  /** Nothing until they have been looked up. */
  get batches(): readonly Shelved[] | undefined {
    return this.#batches;
  }

  /** Every word, which batches need and an empty shelf does not. */
  get words(): Text | undefined {
    return this.#words;
  }

  /** What shows a batch, which an empty shelf does not need either. */
  get card(): typeof BatchCard | undefined {
    return this.#card;
  }

  /** Whether what it takes to read batches, or to tell of them, did not come over the network. */
  get notFetched(): boolean {
    return this.#notFetched;
  }

  get problem(): DeviceProblem | undefined {
    return this.#problem;
  }

  async load(): Promise<void> {
    this.#problem = await orProblem<DeviceProblem | undefined>(
      async () => {
        const headers = await this.#ports.store.headers();
        if (headers.length > 0 && !(await this.#fetchCard())) return undefined;
        this.#batches = await Promise.all(headers.map((header) => this.#shelved(header)));
        return undefined;
      },
      (problem) => problem,
    );
    this.#batches ??= [];
  }

  /** Fetches what it takes to work with batches, and the words for it; nothing where either did not come. */
  async fetch<What>(what: () => Promise<What>): Promise<What | undefined> {
    const [words, fetched] = await Promise.all([wholeText(), what()]).catch(() => []);
    this.#words ??= words;
    this.#notFetched = fetched === undefined;
    return fetched;
  }

  async #fetchCard(): Promise<boolean> {
    const fetched = await this.fetch(() =>
      Promise.all([import('../ui/opening/BatchCard.svelte'), fetchJournal()]),
    );
    this.#card ??= fetched?.[0].default;
    return fetched !== undefined;
  }

  async #shelved(header: BatchHeader): Promise<Shelved> {
    const opened = await openJournal(this.#ports, header.id);
    if (!opened.ok) return { header, facts: undefined, problem: opened.problem };
    const { snapshot, mismatch, header: standing } = opened.value;
    opened.value.close();
    return { header: standing, facts: snapshot.context.facts, problem: mismatch };
  }
}
