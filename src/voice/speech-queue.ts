import type { After, Engine } from './engine';
import { sentences } from './sentences';
import type { SoundPreferences } from '../domain/sound-preferences';
import type { Heard, Speaker } from './speaker';
import { utter, type Outcome } from './utter';
import { voiceFor } from './voice-for';

/** Why nothing is heard: the device has no voice, or the one it has hangs. */
export type Silence = 'no voice' | 'voice stuck';

export type SpeechPorts = {
  engine: Engine;
  after: After;
  language: string;
  preferences: () => SoundPreferences;
  /** Shows a line: each exactly once, in order, whether or not it can be heard. */
  caption: (line: string) => void;
  /** Whether the device is speaking right now: meanwhile its own ears are shut. */
  sounding?: (isSounding: boolean) => void;
  /** Told once in a session, when captions have to do. */
  silent: (why: Silence) => void;
};

type Turn = { line: string; heard: (how: Heard) => void };

const REST_AFTER_CANCEL = 60;
const LOOK_FOR_VOICES_EVERY = 250;
const LOOKS_FOR_VOICES = 8;
/** Seventeen characters a second, the usual pace of subtitles. */
const READ_PER_CHARACTER = 60;
const FAILURES_BEFORE_GIVING_UP = 2;

/** Lines in their order through an engine that cannot be trusted. What cannot be heard stands as long as it takes to read. */
export class SpeechQueue implements Speaker {
  readonly #ports: SpeechPorts;
  readonly #waiting: Turn[] = [];
  #turn: Turn | undefined;
  #callOff: () => void = () => undefined;
  /** Calls off what the engine is busy with that is no turn. */
  #callOffBusy: () => void = () => undefined;
  /** Nothing may sound before the first tap. */
  #tapped = false;
  /** The engine is busy with what is no turn: its first silent word, or the rest after a cancel. */
  #busy = false;
  #failures = 0;
  #looks = 0;
  #silence: Silence | undefined;
  #isSounding = false;

  constructor(ports: SpeechPorts) {
    this.#ports = ports;
  }

  /** Why captions have to do; nothing while the voice works. */
  get silence(): Silence | undefined {
    return this.#silence;
  }

  /** To be called inside the first tap: some devices speak later only if they have spoken then. */
  prime(): void {
    if (this.#tapped) return;
    this.#tapped = true;
    this.#busy = true;
    const { engine, after, language } = this.#ports;
    this.#callOffBusy = utter(
      engine,
      after,
      { words: '.', language, voice: undefined, rate: 1, volume: 0 },
      (outcome) => {
        this.#busy = false;
        this.#settle(outcome);
        this.#next();
      },
    );
  }

  say(line: string): Promise<Heard> {
    return new Promise((heard) => {
      this.#waiting.push({ line, heard });
      this.#next();
    });
  }

  hush(): void {
    const turn = this.#turn;
    const dropped = this.#waiting.splice(0);
    if (turn) this.#stop();
    turn?.heard('captioned');
    for (const { line, heard } of dropped) {
      this.#ports.caption(line);
      heard('captioned');
    }
  }

  #next(): void {
    if (this.#turn || (this.#busy && this.#mayTry)) return;
    this.#turn = this.#waiting.shift();
    if (!this.#turn) return;
    this.#ports.caption(this.#turn.line);
    this.#speakWhenVoiced(this.#turn);
  }

  get #mayTry(): boolean {
    return this.#tapped && !this.#ports.preferences().muted && this.#silence !== 'voice stuck';
  }

  #speakWhenVoiced(turn: Turn): void {
    const { engine, after, language } = this.#ports;
    if (!this.#mayTry) this.#read(turn);
    else if (engine.voices().length > 0) {
      this.#silence = undefined;
      this.#speak(turn, sentences(turn.line, language));
    } else if (this.#looks < LOOKS_FOR_VOICES) {
      this.#looks += 1;
      this.#callOff = after(LOOK_FOR_VOICES_EVERY, () => this.#speakWhenVoiced(turn));
    } else {
      this.#fallSilent('no voice');
      this.#read(turn);
    }
  }

  #speak(turn: Turn, [words, ...rest]: readonly string[]): void {
    if (words === undefined) {
      this.#finish(turn, 'spoken');
      return;
    }
    const { engine, after, language, preferences } = this.#ports;
    const { rate, volume, voice: chosen } = preferences();
    this.#sound(true);
    const voice = voiceFor(engine.voices(), language, chosen)?.id;
    this.#callOff = utter(engine, after, { words, language, voice, rate, volume }, (outcome) => {
      this.#settle(outcome);
      if (outcome === 'ended') this.#speak(turn, rest);
      else if (outcome === 'never ended') this.#finish(turn, 'captioned');
      else this.#read(turn);
    });
  }

  /** What an outcome says of the engine. One that never ends, or fails twice, is given up for the session. */
  #settle(outcome: Outcome): void {
    this.#failures = outcome === 'ended' ? 0 : this.#failures + 1;
    if (outcome === 'ended') return;
    this.#cancel();
    if (outcome === 'never ended' || this.#failures >= FAILURES_BEFORE_GIVING_UP)
      this.#fallSilent('voice stuck');
  }

  #fallSilent(why: Silence): void {
    if (this.#silence === undefined) this.#ports.silent(why);
    this.#silence = why;
  }

  #read(turn: Turn): void {
    this.#sound(false);
    const long = READ_PER_CHARACTER * turn.line.length;
    this.#callOff = this.#ports.after(long, () => this.#finish(turn, 'captioned'));
  }

  #finish(turn: Turn, how: Heard): void {
    this.#sound(false);
    this.#turn = undefined;
    turn.heard(how);
    this.#next();
  }

  #sound(isSounding: boolean): void {
    if (this.#isSounding !== isSounding) this.#ports.sounding?.(isSounding);
    this.#isSounding = isSounding;
  }

  #stop(): void {
    this.#sound(false);
    this.#callOff();
    this.#turn = undefined;
    this.#cancel();
  }

  /** A word spoken right after a cancel is swallowed by some engines. */
  #cancel(): void {
    this.#callOffBusy();
    this.#ports.engine.cancel();
    this.#busy = true;
    this.#callOffBusy = this.#ports.after(REST_AFTER_CANCEL, () => {
      this.#busy = false;
      this.#next();
    });
  }
}
