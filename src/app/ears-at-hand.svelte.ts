import type { EarPreferences } from '../domain/ear-preferences';
import type { EarShown } from '../ui/bench/ear-shown';
import type { EarNews, Ears } from '../voice/ear/ears';

type Chosen = { current: () => EarPreferences; choose: (ear: EarPreferences) => void };

const QUIET: Pick<EarShown, 'level' | 'noise' | 'unreliable'> = { level: -90, noise: -90, unreliable: false };

/** The ears of this device: what a screen shows of them, and whether they were on when the bench was left. */
export class EarsAtHand {
  readonly ears: Ears;
  readonly #chosen: Chosen;
  #state = $state.raw<Pick<EarShown, 'state' | 'problem'>>({ state: 'off' });
  #progress = $state<number>();
  #room = $state.raw(QUIET);

  constructor(ears: Ears, chosen: Chosen) {
    this.ears = ears;
    this.#chosen = chosen;
    ears.subscribe((news) => this.#told(news));
  }

  /** Nothing where the maker wants no ears. */
  get shown(): EarShown | undefined {
    const { who, on } = this.#chosen.current();
    if (who === 'none') return undefined;
    const wasOff = !on && (this.#state.state === 'off' || this.#state.state === 'failed');
    return { ...this.#state, progress: this.#progress, isNew: wasOff, ...this.#room };
  }

  /** Inside a touch. */
  turn(on: boolean): void {
    const { who } = this.#chosen.current();
    if (who === 'none') return;
    this.#chosen.choose({ who, on });
    if (on) void this.ears.turnOn();
    else this.ears.turnOff();
  }

  /** A batch comes onto the bench, or is touched for the first time: ears that were on are on again. */
  wake(): void {
    const { who, on } = this.#chosen.current();
    if (who !== 'none' && on && this.ears.state === 'off') void this.ears.turnOn();
  }

  /** The bench is left: nothing listens elsewhere. */
  rest(): void {
    this.ears.turnOff();
  }

  #told(news: EarNews): void {
    if (news.type === 'state') this.#state = { state: news.state, problem: news.problem };
    if (news.type === 'progress') this.#progress = news.done / news.total;
    if (news.type === 'room') this.#room = news;
  }
}
