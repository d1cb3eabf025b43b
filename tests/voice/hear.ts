import { readFileSync } from 'node:fs';
import { listener, type Hears, type ListenerNews } from '../../src/voice/ear/listener';
import { unpack } from '../../src/voice/ear/pack';
import { openPocketSphinx, type PocketSphinx } from '../../src/voice/ear/pocketsphinx';
import { openRnnoise } from '../../src/voice/ear/rnnoise';
import type { Denoiser } from '../../src/voice/ear/denoiser';
import type { Sound } from './wav';

/** The ear as it is in the app, in Node: the denoiser and the decoder of the pack that is shipped. */
export type Ear = { denoiser: Denoiser; decoder: PocketSphinx };
type Utterance = Extract<ListenerNews, { type: 'heard' }>;

/** Longer than the longest wait for the end of an utterance: after it, all is told. */
const SILENCE_AFTER = 1;
/** How much comes at a time from the microphone. */
const CHUNK = 0.02;

export async function openEar(options?: string): Promise<Ear> {
  const pack = await unpack(new Uint8Array(readFileSync('public/ear/ear.pack')));
  return {
    denoiser: await openRnnoise(pack.part('denoiser')),
    decoder: await openPocketSphinx(pack, options),
  };
}

/** Every news of the listener while it hears a sound, and a moment of silence after it. */
function newsOf(
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
