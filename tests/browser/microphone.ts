import { readFileSync } from 'node:fs';
import type { BrowserContext, Page } from '@playwright/test';

/** What a page hears with in a test: sounds are played into it, over noise. */
type MadeUpMicrophone = {
  /** How often it was asked for. */
  asked: number;
  /** The name of the error it is refused with. */
  refuses: string | undefined;
  /** Plays a sound file, given in base 64, to its end. */
  play: (file: string) => Promise<void>;
  /** Noise as of running water, from now on: so many decibels below the speech in a sound file; nothing: silence. */
  noise: (file: string, snr: number | undefined) => Promise<void>;
  /** Ends, as when a headset is taken off. */
  lose: () => void;
};
declare global {
  var microphone: MadeUpMicrophone;
}

/** Runs in the page, before its own scripts. */
function madeUpMicrophone(): void {
  // An empty page, before the first address, has no devices.
  if (!('mediaDevices' in navigator)) return;
  const SECONDS_OF_NOISE = 3;
  let context: AudioContext | undefined;
  let room: { noise: GainNode; out: MediaStreamAudioDestinationNode } | undefined;
  let streams: MediaStream[] = [];

  const noiseIn = (sounding: AudioContext) => {
    const buffer = sounding.createBuffer(1, SECONDS_OF_NOISE * sounding.sampleRate, sounding.sampleRate);
    const samples = buffer.getChannelData(0);
    let seed = 1;
    let last = 0;
    let power = 0;
    for (let at = 0; at < samples.length; at++) {
      seed = (seed * 48_271) % 2_147_483_647;
      last = 0.9 * last + 0.3 * (seed / 1_073_741_823.5 - 1);
      samples[at] = last;
      power += last * last;
    }
    const loudness = Math.sqrt(power / samples.length);
    for (let at = 0; at < samples.length; at++) samples[at] = (samples[at] ?? 0) / loudness;
    return new AudioBufferSourceNode(sounding, { buffer, loop: true });
  };

  const decoded = (sounding: AudioContext, file: string): Promise<AudioBuffer> =>
    sounding.decodeAudioData(Uint8Array.from(atob(file), (byte) => byte.charCodeAt(0)).buffer);

  /** How loud speech is: of what is not silence in it. */
  const loudnessOf = (samples: Float32Array): number => {
    const loud = samples.filter((sample) => Math.abs(sample) > 0.01);
    return Math.sqrt(loud.reduce((sum, sample) => sum + sample * sample, 0) / Math.max(1, loud.length));
  };

  const open = () => {
    context ??= new AudioContext();
    void context.resume();
    if (room) return { sounding: context, ...room };
    room = { noise: new GainNode(context, { gain: 0 }), out: context.createMediaStreamDestination() };
    const water = noiseIn(context);
    water.connect(room.noise).connect(room.out);
    water.start();
    return { sounding: context, ...room };
  };

  globalThis.microphone = {
    asked: 0,
    refuses: undefined,
    async play(file) {
      const { sounding, out } = open();
      const source = new AudioBufferSourceNode(sounding, { buffer: await decoded(sounding, file) });
      source.connect(out);
      source.start();
      return new Promise((resolve) => source.addEventListener('ended', () => resolve()));
    },
    async noise(file, snr) {
      const { sounding, noise } = open();
      const speech = (await decoded(sounding, file)).getChannelData(0);
      noise.gain.value = snr === undefined ? 0 : loudnessOf(speech) * 10 ** (-snr / 20);
    },
    lose() {
      for (const track of streams.flatMap((stream) => stream.getTracks())) {
        track.stop();
        track.dispatchEvent(new Event('ended'));
      }
      streams = [];
    },
  };

  navigator.mediaDevices.getUserMedia = () => {
    globalThis.microphone.asked += 1;
    const { refuses } = globalThis.microphone;
    if (refuses !== undefined) return Promise.reject(new DOMException('refused', refuses));
    const stream = open().out.stream.clone();
    streams.push(stream);
    return Promise.resolve(stream);
  };
}

/** Gives every page a microphone into which the test speaks. It sounds after the page's first touch. */
export const withMicrophone = (pages: BrowserContext | Page) => pages.addInitScript(madeUpMicrophone);

/** Refuses the microphone from now on, as a browser does: `NotAllowedError`, `NotFoundError`, `NotReadableError`. */
export const refuseMicrophone = (page: Page, error: string | undefined) =>
  page.evaluate((name) => void (globalThis.microphone.refuses = name), error);

export const loseMicrophone = (page: Page) => page.evaluate(() => globalThis.microphone.lose());

const base64 = (clip: string): string => readFileSync(clip).toString('base64');

/** Noise from now on, so loud that the clip stands out of it by so many decibels; nothing: silence. */
export const makeNoise = (page: Page, clip: string, snr: number | undefined) =>
  page.evaluate(([file, below]) => globalThis.microphone.noise(file, below), [base64(clip), snr] as const);

/** Speaks a sound file into the microphone; settles when it is out. */
export const say = (page: Page, clip: string) =>
  page.evaluate((file) => globalThis.microphone.play(file), base64(clip));
