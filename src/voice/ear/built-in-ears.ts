import type { EarWorker, FromWorker, MakeEarWorker } from './ear-messages';
import type { EarNews, EarProblem, Ears, EarState } from './ears';
import type { ListenerNews } from './listener';
import { MicrophoneProblem, type Microphone, type OpenMicrophone } from './microphone';

/** What they are made of, and where the pack lies. */
export type EarParts = { microphone: Microphone; makeWorker: MakeEarWorker; pack: string };

const RESTARTS = 1;

/** Ears of our own: a microphone, and a worker that hears. A worker that dies is made anew once by itself. */
export class BuiltInEars implements Ears {
  readonly #parts: EarParts;
  readonly #listeners = new Set<(news: EarNews) => void>();
  #state: EarState = 'off';
  #worker: EarWorker | undefined;
  #microphone: OpenMicrophone | undefined;
  #grammar: { grammar: string; against: string | undefined } | undefined;
  #isShut = false;
  /** Counts each time that what was heard before is no longer to be told. */
  #turn = 0;
  #restarts = 0;
  /** Tells one turning on from the next, while a device is asked for. */
  #on = 0;
  #settle: (() => void) | undefined;

  constructor(parts: EarParts) {
    this.#parts = parts;
  }

  get state(): EarState {
    return this.#state;
  }

  subscribe(listener: (news: EarNews) => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  turnOn(): Promise<void> {
    if (this.#state !== 'off' && this.#state !== 'failed') return Promise.resolve();
    this.#restarts = 0;
    const settled = new Promise<void>((resolve) => (this.#settle = resolve));
    void this.#begin();
    return settled;
  }

  turnOff(): void {
    this.#end();
    this.#become('off');
  }

  listenFor(grammar: string, against?: string): void {
    this.#grammar = { grammar, against };
    this.#turn += 1;
    this.#worker?.post({ type: 'grammar', grammar, against, turn: this.#turn });
  }

  shut(): void {
    if (this.#isShut) return;
    this.#isShut = true;
    this.#turn += 1;
    this.#worker?.post({ type: 'shut' });
    if (this.#state === 'listening') this.#become('shut');
  }

  open(): void {
    if (!this.#isShut) return;
    this.#isShut = false;
    this.#worker?.post({ type: 'open', turn: this.#turn });
    if (this.#state === 'shut') this.#become('listening');
  }

  async #begin(): Promise<void> {
    const on = (this.#on += 1);
    this.#become('asking');
    try {
      const microphone = await this.#parts.microphone.open((problem) => this.#lost(on, problem));
      if (on !== this.#on) {
        microphone.close();
        return;
      }
      this.#microphone = microphone;
      this.#become('fetching');
      this.#hire(on, microphone);
    } catch (error) {
      if (on === this.#on) this.#fail(error instanceof MicrophoneProblem ? error.problem : 'not supported');
    }
  }

  #hire(on: number, { rate, connect }: OpenMicrophone): void {
    const worker = this.#parts.makeWorker(
      (message) => on === this.#on && this.#told(message),
      () => on === this.#on && this.#again(on),
    );
    this.#worker = worker;
    worker.post({ type: 'start', pack: this.#parts.pack });
    if (this.#isShut) worker.post({ type: 'shut' });
    if (this.#grammar) worker.post({ type: 'grammar', ...this.#grammar, turn: this.#turn });
    const sound = connect();
    worker.post({ type: 'microphone', rate, sound }, [sound]);
  }

  #told(message: FromWorker): void {
    if (message.type === 'progress') this.#tell(message);
    if (message.type === 'starting') this.#become('starting');
    if (message.type === 'ready') this.#become(this.#isShut ? 'shut' : 'listening');
    if (message.type === 'news') this.#news(message.news, message.turn);
    if (message.type === 'broken') this.#fail(message.problem);
  }

  #news(news: ListenerNews, turn: number): void {
    if (this.#isShut || turn !== this.#turn) return;
    if (news.type === 'heard') this.#restarts = 0;
    this.#tell(news);
  }

  /** A headset taken off leaves the phone's own microphone: that is tried before it is given up. */
  #lost(on: number, problem: EarProblem): void {
    if (on !== this.#on) return;
    if (problem === 'not allowed' || !this.#mayRestart()) this.#fail(problem);
    else {
      this.#end();
      void this.#begin();
    }
  }

  /** The worker died: the next one is given the same microphone, so that nobody is asked again. */
  #again(on: number): void {
    const microphone = this.#microphone;
    this.#worker?.end();
    if (!microphone || !this.#mayRestart()) this.#fail('engine broken');
    else {
      this.#become('starting');
      this.#hire(on, microphone);
    }
  }

  /** Once, until something was heard again. */
  #mayRestart(): boolean {
    return (this.#restarts += 1) <= RESTARTS;
  }

  #fail(problem: EarProblem): void {
    this.#end();
    this.#become('failed', problem);
  }

  #end(): void {
    this.#on += 1;
    this.#worker?.end();
    this.#microphone?.close();
    this.#worker = this.#microphone = undefined;
  }

  #become(state: EarState, problem?: EarProblem): void {
    if (this.#state === state && !problem) return;
    this.#state = state;
    this.#tell({ type: 'state', state, ...(problem ? { problem } : {}) });
    if (state === 'asking' || state === 'fetching' || state === 'starting') return;
    this.#settle?.();
    this.#settle = undefined;
  }

  #tell(news: EarNews): void {
    for (const listener of this.#listeners) listener(news);
  }
}
