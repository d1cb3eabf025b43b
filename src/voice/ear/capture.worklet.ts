/** What TypeScript does not know of the scope that sound is worked on in. */
declare const AudioWorkletProcessor: new () => { readonly port: MessagePort };
declare const registerProcessor: (name: string, processor: unknown) => void;

/** Sound comes in bits of 128 samples; this many of them are a message: 11 ms at 48 kHz. */
const BITS = 4;

/** Sends what the microphone hears, one channel, through a port that it is given. */
class Capture extends AudioWorkletProcessor {
  #to: MessagePort | undefined;
  #chunk: Float32Array<ArrayBuffer> | undefined;
  #filled = 0;

  constructor() {
    super();
    this.port.onmessage = ({ data }: MessageEvent<MessagePort>) => (this.#to = data);
  }

  process([input]: readonly (readonly Float32Array[])[]): boolean {
    const samples = input?.[0];
    if (!samples || !this.#to) return true;
    this.#chunk ??= new Float32Array(samples.length * BITS);
    this.#chunk.set(samples, this.#filled);
    this.#filled += samples.length;
    if (this.#filled === this.#chunk.length) this.#send(this.#to, this.#chunk);
    return true;
  }

  #send(to: MessagePort, chunk: Float32Array<ArrayBuffer>): void {
    to.postMessage(chunk, [chunk.buffer]);
    this.#chunk = undefined;
    this.#filled = 0;
  }
}

registerProcessor('capture', Capture);
