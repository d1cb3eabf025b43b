import type { BenchText } from '../text/text';
import type { WakeLock } from '../timers/wake-lock';
import type { SoundPreferences } from '../domain/sound-preferences';
import type { Presence, SoundState } from '../ui/bench/hands-free';
import type { EarShown } from '../ui/bench/ear-shown';
import { Live } from '../ui/live.svelte';
import type { After, Engine } from '../voice/engine';
import { SpeechQueue, type Silence } from '../voice/speech-queue';
import type { EarsAtHand } from './ears-at-hand.svelte';

type Device = {
  engine: Engine;
  after: After;
  text: BenchText;
  preferences: () => SoundPreferences;
  /** Lets tones sound, inside a touch. */
  wakeTones: () => void;
  awake: WakeLock;
  ears: EarsAtHand;
};

/** How the device speaks, shows what it says, and stays awake while a batch is on the bench. */
export class DevicePresence implements Presence {
  readonly speaker: SpeechQueue;
  readonly #device: Device;
  readonly #wake: Live<WakeLock['state']>;
  #captions = $state.raw<readonly string[]>([]);
  #touched = $state(false);
  /** A voice that comes late, or hangs, shows at the next line. */
  #silence = $state<Silence>();
  #atBench = false;
  readonly #said: string[] = [];

  constructor(device: Device) {
    this.#device = device;
    const { awake, text } = device;
    this.#wake = new Live(
      () => awake.state,
      (update) => awake.subscribe(update),
    );
    this.speaker = new SpeechQueue({
      ...device,
      language: text.language,
      sounding: (isSounding) => (isSounding ? device.ears.ears.shut() : device.ears.ears.open()),
      caption: (line) => {
        this.#captions = [...this.#captions, line];
        this.#silence = this.speaker.silence;
      },
      silent: (why) => {
        this.#silence = why;
        this.#sayOnce(text.guide.soundGone[why]);
      },
    });
    awake.subscribe(() => {
      if (awake.state === 'refused' || awake.state === 'absent') this.#sayOnce(text.guide.screenMayDarken);
    });
  }

  get captions(): readonly string[] {
    return this.#captions;
  }
  get awake(): WakeLock['state'] {
    return this.#wake.now;
  }
  get ear(): EarShown | undefined {
    return this.#device.ears.shown;
  }
  turnEars = (on: boolean): void => this.#device.ears.turn(on);
  get sound(): SoundState {
    if (this.#device.preferences().muted) return 'muted';
    if (!this.#touched) return 'untouched';
    return this.#silence ?? 'on';
  }

  /** Inside any touch: nothing may sound before the first. */
  wake(): void {
    this.#touched = true;
    this.speaker.prime();
    this.#device.wakeTones();
    if (!this.#atBench) return;
    void this.#device.awake.hold();
    this.#device.ears.wake();
  }

  /** A batch comes onto the bench. */
  begin(): void {
    this.#captions = [];
    this.#atBench = true;
    if (!this.#touched) return;
    void this.#device.awake.hold();
    this.#device.ears.wake();
  }

  leave(): void {
    this.#atBench = false;
    this.#device.ears.rest();
    void this.#device.awake.release();
  }

  #sayOnce(line: string): void {
    if (this.#said.includes(line)) return;
    this.#said.push(line);
    void this.speaker.say(line);
  }
}
