import * as v from 'valibot';
import type { Moment } from '../domain/calendar';
import { RULES } from '../domain/gates/passing';
import type { Problem } from '../domain/problem';
import { accepted, refused, type Result } from '../domain/result';
import type { Instant } from '../domain/unit';
import { batchEvent, type BatchEvent, type Report } from './batch-event';
import { batchIdentity, type BatchHeader, type BatchIdentity } from './batch-header';
import { firstHeader, headerOf } from './header-of';
import { evidence } from './evidence';
import { firstFault } from './first-fault';
import type { Exclusively, JournalStore, OtherTabs, StoredBatch } from './journal-store';
import { orProblem } from './or-problem';
import { replay, step, type BatchSnapshot } from './replay';

type GatePassed = Extract<Report, { type: 'gate passed' }>;

/** What a screen or the voice reports. That a gate is passed is enough: the rules and the readings are filled in here. */
export type Told = Exclude<Report, GatePassed> | Omit<GatePassed, 'rules' | 'readings'>;

export type JournalPorts = {
  store: JournalStore;
  clock: () => Moment;
  exclusively: Exclusively;
  otherTabs: OtherTabs;
};

/** A batch at one moment: its events, and what follows from them. */
type State = {
  header: BatchHeader;
  events: readonly BatchEvent[];
  snapshot: BatchSnapshot;
  mismatch: Problem | undefined;
};

/**
 * One batch: the accepted events in their order, kept before they are shown. Reports queue; each is judged, written
 * durably, and only then published, so that no screen runs ahead of the disk.
 */
export class Journal {
  readonly #ports: JournalPorts;
  readonly #listeners = new Set<() => void>();
  readonly #deafen: () => void;
  #state: State;
  #queue: Promise<unknown> = Promise.resolve();

  private constructor(ports: JournalPorts, state: State) {
    this.#ports = ports;
    this.#state = state;
    this.#deafen = ports.otherTabs.listen((batch) => {
      if (batch === this.header.id) void this.refresh();
    });
  }

  /** Begins a batch now, under an id of its own. */
  static begin(ports: JournalPorts, batch: Omit<BatchIdentity, 'begun'>): Promise<Result<Journal>> {
    return orProblem(async () => {
      const identity = v.safeParse(batchIdentity, { ...batch, begun: ports.clock() });
      if (!identity.success) return refused({ code: 'report-misread', ...firstFault(identity.issues) });
      const header = firstHeader(identity.output);
      if ((await ports.store.create(header)) === 'collision') return refused({ code: 'written-elsewhere' });
      ports.otherTabs.tell(header.id);
      return accepted(new Journal(ports, stateOf({ header, events: [] })));
    }, refused);
  }

  /** Opens a batch as the store holds it. One that does not follow from its events opens as far as it does. */
  static open(ports: JournalPorts, id: string): Promise<Result<Journal>> {
    return orProblem(async () => {
      const stored = await ports.store.read(id);
      return stored ? accepted(new Journal(ports, stateOf(stored))) : refused({ code: 'no-such-batch' });
    }, refused);
  }

  get header(): BatchHeader {
    return this.#state.header;
  }

  get events(): readonly BatchEvent[] {
    return this.#state.events;
  }

  get snapshot(): BatchSnapshot {
    return this.#state.snapshot;
  }

  /** Why the journal takes no events: it could not be read to its end, or the batch is gone. */
  get mismatch(): Problem | undefined {
    return this.#state.mismatch;
  }

  /** Takes a report, or gives the reason why not; then nothing has changed. Settles when it is written. */
  report(report: Told): Promise<Problem | undefined> {
    return this.#next(() => this.#ports.exclusively(`batch ${this.header.id}`, () => this.#take(report)));
  }

  /** Reads again what another tab, or an import, may have written. */
  refresh(): Promise<Problem | undefined> {
    return this.#next(() => this.#readAgain());
  }

  /** Calls back after every change. Returns the way to stop, as Svelte's `createSubscriber` wants it. */
  subscribe(listener: () => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  /** Stops hearing from other tabs. */
  close(): void {
    this.#deafen();
    this.#listeners.clear();
  }

  #next(work: () => Promise<Problem | undefined>): Promise<Problem | undefined> {
    const done = this.#queue.then(() => orProblem(work, (problem) => problem));
    this.#queue = done.catch(() => undefined);
    return done;
  }

  async #take(report: Told, again = true): Promise<Problem | undefined> {
    const { header, events, snapshot, mismatch } = this.#state;
    if (mismatch) return mismatch;
    const event = this.#stamped(report);
    if (!event.ok) return event.problem;
    const next = step(snapshot, event.value);
    if ('problem' in next) return next.problem;
    const after = {
      ...next,
      header: headerOf(header, next.snapshot),
      events: [...events, event.value],
      mismatch,
    };
    if (
      (await this.#ports.store.append(header.id, after.events.length, event.value, after.header)) ===
      'written'
    ) {
      this.#publish(after);
      this.#ports.otherTabs.tell(header.id);
      return undefined;
    }
    await this.#readAgain();
    return again ? this.#take(report, false) : { code: 'written-elsewhere' };
  }

  /** The report as an event: never earlier than the last, and in the one shape that can be read back. */
  #stamped(report: Told): Result<BatchEvent> {
    const { sheet, facts } = this.snapshot.context;
    const { at, offsetMinutes } = this.#ports.clock();
    const stamp = { at: Math.max(at, facts.now.at) as Instant, offsetMinutes };
    const filled =
      report.type === 'gate passed'
        ? { rules: RULES, readings: evidence(report.gate, sheet, { ...facts, now: stamp }) }
        : {};
    const parsed = v.safeParse(batchEvent, { ...report, ...filled, ...stamp });
    return parsed.success
      ? accepted(parsed.output)
      : refused({ code: 'report-misread', ...firstFault(parsed.issues) });
  }

  async #readAgain(): Promise<undefined> {
    const stored = await this.#ports.store.read(this.header.id);
    this.#publish(stored ? stateOf(stored) : { ...this.#state, mismatch: { code: 'no-such-batch' } });
  }

  #publish(state: State): void {
    this.#state = state;
    for (const listener of this.#listeners) listener();
  }
}

function stateOf({ header, events, problem }: StoredBatch): State {
  const { snapshot, mismatch } = replay(header, events);
  const kept = events.slice(0, snapshot.context.facts.entries);
  return { header: headerOf(header, snapshot), events: kept, snapshot, mismatch: mismatch ?? problem };
}
