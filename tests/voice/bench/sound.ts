import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { randomFrom } from '../../../src/domain/random-from';
import type { Clip } from '../corpus/clip';
import { makeNoise, mixed, NOISES, type Noise } from '../corpus/noise';
import { FOLDER } from '../corpus/folder';
import { SPEAKERS, type Speaker } from '../corpus/speakers';
import { DECODED_RATE as RATE } from '../../../src/voice/ear/decoder';
import { readWav } from '../wav';

/** Decibels from the speech down to the noise; none for a quiet room. */
export type Quiet = 'clean' | 20 | 15 | 10;

export const named = (quiet: Quiet): string => (quiet === 'clean' ? 'clean' : `${String(quiet)} dB`);

/** The room is heard a while before anybody speaks in it, as it is in the app. */
const BEFORE = 1.2;
const AFTER = 0.9;
const SECONDS_OF_NOISE = 60;
/** What a microphone adds by itself. */
const HISS = 0.0002;

export const speakerOf = ({ speaker }: Clip): Speaker => {
  const found = SPEAKERS.find(({ id }) => id === speaker);
  if (!found) throw new Error(`No speaker ${speaker}: render the corpus again.`);
  return found;
};

export function corpus(set: Speaker['set']): Clip[] {
  const clips = JSON.parse(readFileSync(join(FOLDER, 'clips.json'), 'utf8')) as Clip[];
  return clips.filter((clip) => speakerOf(clip).set === set);
}

const padded = (sound: Float32Array): Float32Array => {
  const whole = new Float32Array(sound.length + Math.round((BEFORE + AFTER) * RATE));
  whole.set(sound, Math.round(BEFORE * RATE));
  return whole;
};

/** Where the last sound of a recording is, in seconds: the last hundredth within 35 dB of the loudest. */
function lastSound(sound: Float32Array): number {
  const step = RATE / 100;
  const powers = Array.from({ length: Math.floor(sound.length / step) }, (_, nth) =>
    sound.subarray(nth * step, (nth + 1) * step).reduce((sum, sample) => sum + sample * sample, 0),
  );
  const least = Math.max(...powers) / 10 ** 3.5;
  return (powers.findLastIndex((power) => power > least) + 1) / 100;
}

/** Rooms with each kind of noise; the babble is other talk of the same speakers. */
export function rooms(clips: readonly Clip[]) {
  const prose = clips.filter(({ kind }) => kind === 'prose');
  const talk = Array.from(
    { length: 6 },
    (_, nth) =>
      readWav(join(FOLDER, prose[Math.floor(((nth + 0.5) * prose.length) / 6)]?.file ?? '')).samples,
  );
  const noises = new Map<Noise, Float32Array>(
    NOISES.map((noise, nth) => [noise, makeNoise(noise, SECONDS_OF_NOISE, 1000 + nth, talk)]),
  );
  const hiss = randomFrom(7);

  /** A recording as it is heard in a room; the kinds of noise take turns. `ends`: when the speech is over. */
  const heard = (clip: Clip, quiet: Quiet, nth: number): { sound: Float32Array; ends: number } => {
    const speech = readWav(join(FOLDER, clip.file)).samples;
    const noise = quiet === 'clean' ? undefined : noises.get(NOISES[nth % NOISES.length] ?? 'water');
    const level = quiet === 'clean' ? 0 : quiet;
    const sound = mixed(padded(speech), noise, level, (nth * 1.7) % SECONDS_OF_NOISE);
    return {
      sound: sound.map((sample) => sample + (hiss() - 0.5) * HISS),
      ends: BEFORE + lastSound(speech),
    };
  };
  const noiseAlone = (): { noise: Noise; sound: Float32Array }[] =>
    [...noises].map(([noise, sound]) => ({ noise, sound: mixed(sound, undefined, 0, 0) }));
  return { heard, noiseAlone };
}
