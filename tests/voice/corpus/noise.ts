import { randomFrom } from '../../../src/domain/random-from';
import { DECODED_RATE as RATE } from '../../../src/voice/ear/decoder';

export const NOISES = ['water', 'hum', 'glass', 'babble'] as const;
export type Noise = (typeof NOISES)[number];

/** Noise of even strength at every pitch: what all the others are cut from. */
const white = (length: number, seed: number): Float32Array => {
  const random = randomFrom(seed);
  return Float32Array.from({ length }, () => random() + random() + random() - 1.5);
};

/** Half as strong for each octave up. */
function pink(length: number, seed: number): Float32Array {
  let [slow, middle, fast] = [0, 0, 0];
  return white(length, seed).map((sample) => {
    slow = 0.99765 * slow + sample * 0.099046;
    middle = 0.963 * middle + sample * 0.2965164;
    fast = 0.57 * fast + sample * 1.0526913;
    return (slow + middle + fast + sample * 0.1848) / 4;
  });
}

/** A ring that dies away, at one pitch. */
function ring(into: Float32Array, at: number, hertz: number, dies: number, loud: number): void {
  const length = Math.min(into.length - at, Math.round(dies * 6 * RATE));
  for (let nth = 0; nth < length; nth++)
    into[at + nth] =
      (into[at + nth] ?? 0) +
      loud * Math.exp(-nth / (dies * RATE)) * Math.sin((2 * Math.PI * hertz * nth) / RATE);
}

/** A running tap: pink noise that swells a little, and drops that gurgle. */
function water(length: number, seed: number): Float32Array {
  const random = randomFrom(seed + 1);
  const made = pink(length, seed).map(
    (sample, nth) => sample * (1 + 0.3 * Math.sin((2 * Math.PI * 0.7 * nth) / RATE)),
  );
  for (let drop = 0; drop < (length / RATE) * 40; drop++)
    ring(made, Math.floor(random() * length), 400 + random() * 1600, 0.006 + random() * 0.02, 0.15);
  return made;
}

/** An extractor fan: mains hum and its multiples over a dull rush of air. */
function hum(length: number, seed: number): Float32Array {
  let dull = 0;
  return white(length, seed).map((sample, nth) => {
    dull += (sample - dull) * 0.12;
    const tones = [100, 200, 300, 450].map(
      (hertz, tone) => (0.12 / (tone + 1)) * Math.sin((2 * Math.PI * hertz * nth) / RATE),
    );
    return dull + tones.reduce((sum, tone) => sum + tone, 0);
  });
}

/** Bottles that touch now and then, over a quiet room. */
function glass(length: number, seed: number): Float32Array {
  const random = randomFrom(seed + 2);
  const made = pink(length, seed).map((sample) => sample * 0.08);
  for (let clink = 0; clink < (length / RATE) * 5; clink++) {
    const at = Math.floor(random() * length);
    const base = 1800 + random() * 2600;
    [1, 1.48, 2.31].forEach((times, nth) =>
      ring(made, at, base * times > 7800 ? 7800 : base * times, 0.03 + random() * 0.06, 0.5 / (nth + 1)),
    );
  }
  return made;
}

/** Several people talking at once, from given talk. */
function babble(length: number, seed: number, talk: readonly Float32Array[]): Float32Array {
  const random = randomFrom(seed + 3);
  const made = new Float32Array(length);
  talk.forEach((voice) => {
    const from = Math.floor(random() * voice.length);
    for (let nth = 0; nth < length; nth++)
      made[nth] = (made[nth] ?? 0) + (voice[(from + nth) % voice.length] ?? 0);
  });
  return made;
}

/** Noise of a kind, the same for the same seed. `talk` is what a babble is made of. */
export function makeNoise(
  noise: Noise,
  seconds: number,
  seed: number,
  talk: readonly Float32Array[],
): Float32Array {
  const length = Math.round(seconds * RATE);
  const make = { water, hum, glass, babble }[noise];
  return make(length, seed, talk);
}

const FRAME = RATE / 50;

/** The loudness of what is said, pauses apart: frames within 30 dB of the loudest. */
function loudness(samples: Float32Array): number {
  const powers = Array.from({ length: Math.floor(samples.length / FRAME) }, (_, nth) =>
    samples.subarray(nth * FRAME, (nth + 1) * FRAME).reduce((sum, sample) => sum + sample * sample, 0),
  );
  const spoken = powers.filter((power) => power > Math.max(...powers) / 1000);
  return Math.sqrt(spoken.reduce((sum, power) => sum + power, 0) / (spoken.length * FRAME));
}

const strength = (samples: Float32Array): number =>
  Math.sqrt(samples.reduce((sum, sample) => sum + sample * sample, 0) / samples.length);

/** Speech at a steady level with noise so many decibels below it, from `from` seconds of the noise on. */
export function mixed(
  speech: Float32Array,
  noise: Float32Array | undefined,
  decibels: number,
  from: number,
): Float32Array {
  const up = 0.08 / loudness(speech);
  if (!noise) return speech.map((sample) => sample * up);
  const down = 0.08 / 10 ** (decibels / 20) / strength(noise);
  const start = Math.round(from * RATE);
  return speech.map((sample, nth) => sample * up + (noise[(start + nth) % noise.length] ?? 0) * down);
}
