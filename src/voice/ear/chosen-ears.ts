import type { EarNews, Ears, EarState } from './ears';

/** Whichever ears the maker has chosen when they are turned on; until they are turned off it stays with those. */
export class ChosenEars implements Ears {
  readonly #choose: () => Ears;
  readonly #listeners = new Set<(news: EarNews) => void>();
  #ears: Ears | undefined;
  #unsubscribe: () => void = () => undefined;
  #grammar: [grammar: string, against?: string] | undefined;
  #isShut = false;

  constructor(choose: () => Ears) {
    this.#choose = choose;
  }

  get state(): EarState {
    return this.#ears?.state ?? 'off';
  }

  turnOn(): Promise<void> {
    if (this.state !== 'off' && this.state !== 'failed') return Promise.resolve();
    this.#unsubscribe();
    const ears = this.#choose();
    this.#ears = ears;
    this.#unsubscribe = ears.subscribe((news) => {
      for (const listener of this.#listeners) listener(news);
    });
    if (this.#grammar) ears.listenFor(...this.#grammar);
    if (this.#isShut) ears.shut();
    else ears.open();
    return ears.turnOn();
  }

  turnOff(): void {
    this.#ears?.turnOff();
  }

  listenFor(...grammar: [grammar: string, against?: string]): void {
    this.#grammar = grammar;
    this.#ears?.listenFor(...grammar);
  }

  shut(): void {
    this.#isShut = true;
    this.#ears?.shut();
  }

  open(): void {
    this.#isShut = false;
    this.#ears?.open();
  }

  subscribe(listener: (news: EarNews) => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }
}
