import type { EarNews, Ears, EarState } from '../../src/voice/ear/ears';
import type { Room } from '../../src/voice/ear/room';

const MARGINS = { surely: 200, barely: 50, not: 0 };

/** Ears that hear what they are told to, as well as they are told to. */
export class FakeEars implements Ears {
  state: EarState = 'off';
  grammar = '';
  readonly #listeners = new Set<(news: EarNews) => void>();

  turnOn = (): Promise<void> => {
    this.becomes('listening');
    return Promise.resolve();
  };
  turnOff = (): void => this.becomes('off');
  listenFor = (grammar: string): void => void (this.grammar = grammar);
  shut = (): void => undefined;
  open = (): void => undefined;

  subscribe = (listener: (news: EarNews) => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  becomes(state: EarState): void {
    this.state = state;
    this.#tell({ type: 'state', state });
  }

  hear(words: string, how: keyof typeof MARGINS = 'surely'): void {
    const segments = [{ word: words, from: 0, to: 1, score: 0 }];
    const hearing = { words, segments, score: 0, margin: MARGINS[how], inside: MARGINS[how], seconds: 1 };
    this.#tell({ type: 'heard', hearing, snr: 30, seconds: 1 });
  }

  inRoom(room: Partial<Room>): void {
    this.#tell({ type: 'room', level: -40, noise: -60, snr: 30, unreliable: false, ...room });
  }

  #tell(news: EarNews): void {
    for (const listener of this.#listeners) listener(news);
  }
}
