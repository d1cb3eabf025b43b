import { readFileSync } from 'node:fs';
import { listener, type Hears, type ListenerNews } from '../../src/voice/ear/listener';
import { unpack } from '../../src/voice/ear/pack';
import { openPocketSphinx, type PocketSphinx } from '../../src/voice/ear/pocketsphinx';
import { openRnnoise } from '../../src/voice/ear/rnnoise';
import type { Denoiser } from '../../src/voice/ear/denoiser';

/** The ear as it is in the app, in Node: the denoiser and the decoder of the pack that is shipped. */
export type Ear = { denoiser: Denoiser; decoder: PocketSphinx };
export type Sound = { rate: number; samples: Float32Array };
type Utterance = Extract<ListenerNews, { type: 'heard' }>;

/** Longer than the longest wait for the end of an utterance: after it, all is told. */
const SILENCE_AFTER = 1;
/** How much comes at a time from the microphone. */
const CHUNK = 0.02;

export async function openEar(options = ''): Promise<Ear> {
  const pack = await unpack(new Uint8Array(readFileSync('public/ear/ear.pack')));
  return {
    denoiser: await openRnnoise(pack.part('denoiser')),
    decoder: await openPocketSphinx(pack, options),
  };
}

/** The first channel of a WAV file of 16-bit samples. */
export function readWav(file: string): Sound {
  const bytes = readFileSync(file);
  const channels = bytes.readUInt16LE(22);
  const data = bytes.indexOf('data', 12, 'latin1') + 8;
  const frames = Math.min(bytes.readUInt32LE(data - 4), bytes.length - data) / (2 * channels);
  const samples = Float32Array.from(
    { length: Math.floor(frames) },
    (_, at) => bytes.readInt16LE(data + at * 2 * channels) / 32_768,
  );
  return { rate: bytes.readUInt32LE(24), samples };
}

/** Every news of the listener while it hears a sound, and a moment of silence after it. */
export function newsOf(
  { denoiser, decoder }: Ear,
  { rate, samples }: Sound,
  more: Partial<Hears> = {},
): ListenerNews[] {
  const news: ListenerNews[] = [];
  const ears = listener({ rate, denoiser, decoder, tell: (one) => news.push(one), ...more });
  const chunk = Math.round(CHUNK * rate);
  for (let at = 0; at < samples.length; at += chunk) ears.hear(samples.subarray(at, at + chunk));
  for (let at = 0; at < SILENCE_AFTER / CHUNK; at++) ears.hear(new Float32Array(chunk));
  return news;
}

/** What is heard in a sound under a grammar. */
export function hear(ear: Ear, sound: Sound, grammar: string, against?: string): Utterance[] {
  ear.decoder.setGrammar(grammar, against);
  return newsOf(ear, sound).filter((one) => one.type === 'heard');
}
