import type { Engine, Told, Utterance, Voice } from '../../src/voice/engine';
import type { SimulatedClock } from './simulated-clock';

const ANNA: Voice = { id: 'anna', name: 'Anna', language: 'en-GB', local: true };
const START = 50;
const PER_CHARACTER = 55;

/** What a fake engine was asked to say, and when it really sounded: `until` is missing while it has not ended. */
export type Sounded = { words: string; from: number; until?: number; cut?: true };

type Ways = { voicesFrom?: number; neverEnds?: boolean; neverStarts?: boolean };

/** A speech engine that behaves, or misbehaves in one of the ways that were met. It notes whatever sounds. */
export class FakeEngine implements Engine {
  readonly sounded: Sounded[] = [];
  readonly #clock: SimulatedClock;
  readonly #ways: Ways;
  #queue: { utterance: Utterance; told: Told }[] = [];
  #stop: (() => void) | undefined;

  constructor(clock: SimulatedClock, ways: Ways = {}) {
    this.#clock = clock;
    this.#ways = ways;
  }

  voices = (): readonly Voice[] => (this.#clock.now() >= (this.#ways.voicesFrom ?? 0) ? [ANNA] : []);

  speak = (utterance: Utterance, told: Told): void => {
    this.#queue.push({ utterance, told });
    if (!this.#stop) this.#next();
  };

  /** As met: it silences a sound one, and does not free one that hangs. */
  cancel = (): void => {
    this.#queue = [];
    const last = this.sounded.at(-1);
    if (!this.#stop || this.#ways.neverEnds) return;
    this.#stop();
    this.#stop = undefined;
    if (last && last.until === undefined) Object.assign(last, { until: this.#clock.now(), cut: true });
  };

  #next(): void {
    const next = this.#queue.shift();
    this.#stop = undefined;
    if (!next || this.#ways.neverStarts) return;
    this.#stop = this.#clock.after(START, () => this.#start(next.utterance, next.told));
  }

  #start({ words, volume }: Utterance, told: Told): void {
    const sound: Sounded = { words, from: this.#clock.now() };
    if (volume > 0) this.sounded.push(sound);
    told.started();
    if (this.#ways.neverEnds) return;
    this.#stop = this.#clock.after(PER_CHARACTER * words.length, () => {
      sound.until = this.#clock.now();
      this.#stop = undefined;
      told.ended();
      this.#next();
    });
  }
}
