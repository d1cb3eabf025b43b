import { DECODED_RATE, type Decoder } from '../../../src/voice/ear/decoder';
import type { Denoiser } from '../../../src/voice/ear/denoiser';
import { listener } from '../../../src/voice/ear/listener';

/** As a microphone gives them. */
const CHUNK = DECODED_RATE / 100;

/**
 * What the listener cut out of a stretch of sound, and how far it stands out of the noise (dB); when it had it decoded,
 * and when it was sure that it was over.
 */
export type Cut = { samples: Int16Array; snr: number; decoded: number; over: number };

const seconds = (): number => process.cpuUsage().user / 1e6;

/**
 * Hears sound as the app does, up to the decoder, and gives what there would be to decode: nothing of what is longer
 * than any phrase. Times in seconds.
 */
export function cut(denoiser: Denoiser, sound: Float32Array, wet?: number): { cuts: Cut[]; took: number } {
  const cuts: Cut[] = [];
  let at = 0;
  let last: { samples: Int16Array; decoded: number } | undefined;
  const decoder: Decoder = {
    setGrammar: () => undefined,
    decode(samples) {
      last = { samples, decoded: at / DECODED_RATE };
      return undefined;
    },
  };
  const ear = listener({
    ...{ rate: DECODED_RATE, denoiser, decoder },
    tell(news) {
      if (news.type !== 'heard') return;
      if (last) cuts.push({ ...last, snr: news.snr, over: at / DECODED_RATE });
      last = undefined;
    },
    ...(wet === undefined ? {} : { wet }),
  });
  const began = seconds();
  for (; at < sound.length; at += CHUNK) ear.hear(sound.subarray(at, at + CHUNK));
  return { cuts, took: seconds() - began };
}

/** How long something took the processor, in seconds. */
export function timed<T>(what: () => T): { result: T; took: number } {
  const began = seconds();
  const result = what();
  return { result, took: seconds() - began };
}
