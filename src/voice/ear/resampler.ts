import { joined } from './joined';

/** Zero crossings of the low-pass on each side: 70 dB down beyond its short slope. */
const CROSSINGS = 32;
/** Where the low-pass begins to fall, of the lower of the two rates' half: what lies above would fold back. */
const PASS = 0.92;
const KAISER = 7;

export type Resampler = (samples: Float32Array) => Float32Array;

/**
 * Turns a stream of samples, in chunks of any size, from one rate to another: a polyphase low-pass, so that 44.1 kHz
 * to 48 kHz and 48 kHz to 16 kHz are the same thing.
 */
export function resampler(from: number, to: number): Resampler {
  const shared = greatestShared(from, to);
  const up = to / shared;
  const down = from / shared;
  const reach = CROSSINGS * Math.max(1, down / up);
  const taps = Math.ceil(reach) * 2;
  const phases = Array.from({ length: up }, (_, phase) => lowPass(phase / up, taps, reach));
  let kept = new Float32Array(taps);
  /** The next output's place between the inputs, in `up`ths of an input, from the start of what is kept. */
  let place = 0;
  return (samples) => {
    const all = joined(kept, samples);
    const count = Math.max(0, Math.ceil(((all.length - taps) * up - place) / down));
    const out = Float32Array.from({ length: count }, (_, index) => {
      const at = place + index * down;
      return weighed(all, Math.floor(at / up), phases[at % up] ?? new Float32Array());
    });
    place += count * down;
    const used = Math.min(Math.floor(place / up), all.length);
    kept = all.slice(used);
    place -= used * up;
    return out;
  };
}

/** A Kaiser-windowed sinc around `offset` past the middle of its taps, of gain 1. */
function lowPass(offset: number, taps: number, reach: number): Float32Array {
  const cutoff = (CROSSINGS / reach) * PASS;
  const values = Float32Array.from({ length: taps }, (_, tap) => {
    const distance = tap - (taps / 2 - 1) - offset;
    const inside = 1 - (distance / reach) ** 2;
    return inside <= 0 ? 0 : sinc(cutoff * distance) * bessel(KAISER * Math.sqrt(inside));
  });
  const sum = values.reduce((total, value) => total + value, 0);
  return values.map((value) => value / sum);
}

const sinc = (x: number) => (x === 0 ? 1 : Math.sin(Math.PI * x) / (Math.PI * x));

/** The modified Bessel function of order 0, by its series. */
function bessel(x: number): number {
  let sum = 1;
  let term = 1;
  for (let k = 1; term > 1e-9 * sum; k++) sum += term *= (x / (2 * k)) ** 2;
  return sum;
}

function weighed(samples: Float32Array, first: number, weights: Float32Array): number {
  let sum = 0;
  for (let tap = 0; tap < weights.length; tap++) sum += (samples[first + tap] ?? 0) * (weights[tap] ?? 0);
  return sum;
}

function greatestShared(one: number, other: number): number {
  return other === 0 ? one : greatestShared(other, one % other);
}
