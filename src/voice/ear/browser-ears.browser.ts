import type { EarNews, EarProblem, Ears, EarState } from './ears';

/** The browser's own recogniser, as far as it is used. What TypeScript's DOM does not know yet. */
type Recognised = { readonly transcript: string; readonly confidence: number };
type ResultList = ArrayLike<ArrayLike<Recognised> & { readonly isFinal: boolean }>;
type Recognition = EventTarget & {
  lang: string;
  continuous: boolean;
  interimResults: boolean;
  maxAlternatives: number;
  processLocally: boolean;
  start: () => void;
  abort: () => void;
};
type Recogniser = {
  new (): Recognition;
  available?: (asked: { langs: string[]; processLocally: boolean }) => Promise<string>;
};
declare global {
  var SpeechRecognition: Recogniser | undefined;
}

/** Whether the browser promises to understand this language on the device, and has all it needs for it. */
export async function browserHears(language: string): Promise<boolean> {
  const ask = globalThis.SpeechRecognition?.available;
  if (!ask) return false;
  const answer = await ask
    .call(globalThis.SpeechRecognition, { langs: [language], processLocally: true })
    .catch(() => 'unavailable');
  return answer === 'available';
}

const PROBLEMS: Record<string, EarProblem> = {
  'not-allowed': 'not allowed',
  'service-not-allowed': 'not allowed',
  'audio-capture': 'no microphone',
  'language-not-supported': 'not supported',
};
/** Errors after which it simply begins again: nobody spoke, or it was called off. */
const NOTHING: ReadonlySet<string> = new Set(['no-speech', 'aborted']);
/** A margin as our own ears give it, for what the browser is quite sure of. */
const SURE_MARGIN = 200;

/** The ears of the browser, only where it keeps to the device. It has no grammar: what is not on offer is not heeded. */
export class BrowserEars implements Ears {
  readonly #language: string;
  readonly #listeners = new Set<(news: EarNews) => void>();
  #state: EarState = 'off';
  #recognition: Recognition | undefined;
  #isShut = false;

  constructor(language: string) {
    this.#language = language;
  }

  get state(): EarState {
    return this.#state;
  }

  async turnOn(): Promise<void> {
    if (this.#state !== 'off' && this.#state !== 'failed') return;
    this.#become('asking');
    const Recogniser = globalThis.SpeechRecognition;
    if (!Recogniser || !(await browserHears(this.#language))) {
      this.#fail('not supported');
      return;
    }
    this.#recognition = this.#listening(new Recogniser());
    this.#become(this.#isShut ? 'shut' : 'listening');
    if (!this.#isShut) this.#recognition.start();
  }

  turnOff(): void {
    this.#end();
    this.#become('off');
  }

  listenFor(): void {
    // It takes no grammar.
  }

  shut(): void {
    if (this.#isShut) return;
    this.#isShut = true;
    // First told, then called off: its end would begin it again.
    if (this.#state === 'listening') this.#become('shut');
    this.#recognition?.abort();
  }

  open(): void {
    if (!this.#isShut) return;
    this.#isShut = false;
    if (this.#state !== 'shut') return;
    this.#become('listening');
    this.#begin();
  }

  subscribe(listener: (news: EarNews) => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  #listening(recognition: Recognition): Recognition {
    Object.assign(recognition, {
      lang: this.#language,
      continuous: true,
      interimResults: false,
      maxAlternatives: 1,
      processLocally: true,
    });
    recognition.addEventListener('result', (event) => this.#heard(event));
    recognition.addEventListener('error', (event) => {
      const { error } = event as Event & { error: string };
      if (!NOTHING.has(error)) this.#fail(PROBLEMS[error] ?? 'engine broken');
    });
    recognition.addEventListener('end', () => {
      if (this.#state === 'listening') this.#begin();
    });
    return recognition;
  }

  /** It may still be ending: then its own end begins it again. */
  #begin(): void {
    try {
      this.#recognition?.start();
    } catch (error) {
      if (!(error instanceof DOMException)) throw error;
    }
  }

  #heard(event: Event): void {
    if (this.#isShut) return;
    const { results, resultIndex } = event as Event & { results: ResultList; resultIndex: number };
    const result = results[resultIndex];
    const best = result?.[0];
    if (!result?.isFinal || !best) return;
    const words = best.transcript
      .toLowerCase()
      .replaceAll(/[.,!?]+(\s|$)/g, ' ')
      .trim();
    const segments = [{ word: words, from: 0, to: 1, score: 0 }];
    const margin = best.confidence * SURE_MARGIN;
    const hearing = { words, segments, score: 0, margin, inside: margin, seconds: 1 };
    this.#tell({ type: 'heard', hearing, snr: Infinity, seconds: 1 });
  }

  #fail(problem: EarProblem): void {
    this.#end();
    this.#become('failed', problem);
  }

  #end(): void {
    const recognition = this.#recognition;
    this.#recognition = undefined;
    recognition?.abort();
  }

  #become(state: EarState, problem?: EarProblem): void {
    this.#state = state;
    this.#tell({ type: 'state', state, ...(problem ? { problem } : {}) });
  }

  #tell(news: EarNews): void {
    for (const listener of this.#listeners) listener(news);
  }
}
