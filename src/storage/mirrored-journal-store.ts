import { ProblemError, type DeviceProblem } from '../domain/problem';
import type { BatchEvent } from '../workflow/batch-event';
import type { BatchHeader } from '../workflow/batch-header';
import type { JournalStore, StoredBatch, Written } from '../workflow/journal-store';
import { BatchCopy } from './batch-copy';
import type { Database } from './database';
import { lacking, laterHeader, mend, type Found } from './mend';

const NOTHING: Found = { header: undefined, events: new Map() };

/** Does something a little later: when the page has shown what it has to show. */
type Later = (work: () => void) => void;

/**
 * Every batch in two databases. The first is the truth, and decides who wrote first: what is on its disk is kept. The second
 * follows it without being waited for, and is read when the first has lost something.
 */
export class MirroredJournalStore implements JournalStore {
  readonly #first: BatchCopy;
  readonly #second: BatchCopy;
  readonly #warn: (problem: DeviceProblem) => void;
  readonly #later: Later;
  #warned = false;
  /** What the second database has still to be told, one after another. */
  #following: Promise<unknown> = Promise.resolve();
  readonly #turns = new Set<() => void>();

  /** `warn` is told once, should the second database refuse. */
  constructor(
    first: Database,
    second: Database,
    warn: (problem: DeviceProblem) => void,
    later: Later = (work) => work(),
  ) {
    this.#later = later;
    this.#first = new BatchCopy(first);
    this.#second = new BatchCopy(second);
    this.#warn = warn;
  }

  async headers(): Promise<readonly BatchHeader[]> {
    await this.#followed();
    const [first, second] = await this.#both((copy) => copy.headers(), []);
    const byId = new Map<string, BatchHeader>();
    for (const header of [...first, ...second])
      byId.set(header.id, laterHeader(byId.get(header.id), header) ?? header);
    return [...byId.values()].toSorted((a, b) => a.begun.at - b.begun.at);
  }

  async read(id: string): Promise<StoredBatch | undefined> {
    await this.#followed();
    return this.#mended(id);
  }

  async #mended(id: string): Promise<StoredBatch | undefined> {
    const [first, second] = await this.#both((copy) => copy.find(id), NOTHING);
    const batch = mend(first, second);
    if (batch && !batch.problem) await this.#heal(batch, first, second);
    return batch;
  }

  async create(header: BatchHeader, events: readonly BatchEvent[] = []): Promise<Written> {
    const outcome = await this.#first.create(header, events);
    if (outcome === 'written') this.#follow(header.id, (copy) => copy.create(header, events));
    return outcome;
  }

  async append(id: string, entry: number, event: BatchEvent, header: BatchHeader): Promise<Written> {
    const outcome = await this.#first.append(id, entry, event, header);
    if (outcome === 'written') this.#follow(id, (copy) => copy.append(id, entry, event, header));
    return outcome;
  }

  /** The second copy goes first: were it to stay behind alone, the batch would come back from it. */
  async remove(id: string): Promise<void> {
    await this.#followed();
    await this.#second.remove(id);
    await this.#first.remove(id);
  }

  /** The second copy is written in its turn. One that fell behind is brought up from both. */
  #follow(id: string, write: (copy: BatchCopy) => Promise<Written>): void {
    const turn = new Promise<void>((resolve) => {
      const begin = () => {
        this.#turns.delete(begin);
        resolve();
      };
      this.#turns.add(begin);
      this.#later(begin);
    });
    const before = this.#following;
    this.#following = this.#unlessRefused(async () => {
      await Promise.allSettled([turn, before]);
      if ((await write(this.#second)) === 'collision') await this.#mended(id);
    });
  }

  /** Who reads waits for what is still to be written, and so it is written now. */
  async #followed(): Promise<void> {
    for (const begin of [...this.#turns]) begin();
    await this.#following;
  }

  /** Both copies made whole again. Were the first to refuse, its next event would say so; reading goes on. */
  async #heal(batch: StoredBatch, first: Found, second: Found): Promise<void> {
    const { id } = batch.header;
    const [toFirst, toSecond] = [lacking(first, batch), lacking(second, batch)];
    if (toFirst) await this.#first.fill(id, toFirst).catch(ignoreRefusal);
    if (toSecond) await this.#unlessRefused(() => this.#second.fill(id, toSecond));
  }

  /** Asks both copies; one that refuses counts as empty, unless both do. */
  async #both<Answer>(ask: (copy: BatchCopy) => Promise<Answer>, nothing: Answer): Promise<[Answer, Answer]> {
    const [first, second] = await Promise.allSettled([ask(this.#first), ask(this.#second)]);
    if (second.status === 'rejected') this.#warnOnce(second.reason);
    if (first.status === 'fulfilled')
      return [first.value, second.status === 'fulfilled' ? second.value : nothing];
    if (second.status === 'rejected') throw first.reason;
    return [nothing, second.value];
  }

  async #unlessRefused(work: () => Promise<unknown>): Promise<void> {
    try {
      await work();
    } catch (error) {
      this.#warnOnce(error);
    }
  }

  #warnOnce(error: unknown): void {
    if (!(error instanceof ProblemError)) throw error;
    if (!this.#warned) this.#warn({ code: 'no-second-copy', reason: error.problem });
    this.#warned = true;
  }
}

function ignoreRefusal(error: unknown): void {
  if (!(error instanceof ProblemError)) throw error;
}
