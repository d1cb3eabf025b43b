import type { Heard } from './speaker';
import { SpeechQueue, type SpeechPorts } from './speech-queue';

/** What a trial of the voice needs: it captions nothing, because whoever asks for it shows the line. */
export type SoundCheckPorts = Omit<SpeechPorts, 'caption' | 'silent'>;

/** Speaks one line with the voice as it is chosen, the newest only. A device that hung before is tried anew. */
export class SoundCheck {
  readonly #ports: SoundCheckPorts;
  #queue: SpeechQueue;

  constructor(ports: SoundCheckPorts) {
    this.#ports = ports;
    this.#queue = this.#fresh();
  }

  /** To be called inside a tap. */
  readonly say = (line: string): Promise<Heard> => {
    if (this.#queue.silence === 'voice stuck') this.#queue = this.#fresh();
    this.#queue.prime();
    this.#queue.hush();
    return this.#queue.say(line);
  };

  readonly hush = (): void => this.#queue.hush();

  #fresh(): SpeechQueue {
    return new SpeechQueue({ ...this.#ports, caption: () => undefined, silent: () => undefined });
  }
}
