import type { After, Engine, Voice } from './engine';
import { speakersOf } from './speakers-of';

const LOOK_EVERY = 250;
/** As long as a line waits for its voice. */
const LOOKS_BEFORE_NONE = 8;

/** The device's voices for one language, looked for while someone watches: they come late, and not every device says so. */
export class VoiceSearch {
  readonly #engine: Engine;
  readonly #after: After;
  readonly #language: string;
  #looks = 0;

  constructor(engine: Engine, after: After, language: string) {
    this.#engine = engine;
    this.#after = after;
    this.#language = language;
  }

  /** Nothing while it is too early to say that there are none. */
  readonly found = (): readonly Voice[] | undefined => {
    const found = speakersOf(this.#language, this.#engine.voices());
    return found.length > 0 || this.#looks >= LOOKS_BEFORE_NONE ? found : undefined;
  };

  /** Tells whenever other voices are found. Gives back how to stop looking. */
  readonly watch = (changed: () => void): (() => void) => {
    let known = this.#ids();
    let callOff: () => void;
    const look = () => {
      callOff = this.#after(LOOK_EVERY, look);
      this.#looks += 1;
      const ids = this.#ids();
      if (ids === known) return;
      known = ids;
      changed();
    };
    callOff = this.#after(LOOK_EVERY, look);
    return () => callOff();
  };

  #ids(): string | undefined {
    return this.found()
      ?.map(({ id }) => id)
      .join('\n');
  }
}
