import { decibels, powerOf } from './decibels';
import { DECODED_RATE } from './decoder';
import { DENOISED_RATE, FRAME, type Denoiser } from './denoiser';
import { joined } from './joined';
import { resampler } from './resampler';

/** A hundredth of a second of sound, taken apart. */
export type Heard = {
  /** How likely it is speech, 0 to 1. */
  speech: number;
  /** Its mean square as it came in. */
  power: number;
  /** What is left without its noise, in dB below full scale. */
  cleanLevel: number;
  /** What is decoded, at 16 kHz. */
  sound: Float32Array;
};

export type FrontEnd = {
  /** Samples within ±1 in chunks of any size: the frames that they fill. */
  frames: (samples: Float32Array) => Generator<Heard, void>;
  /** Forgets a frame half filled. */
  drop: () => void;
};

/** `wet`: how much is taken without its noise. All of it sounds hollow, and is understood less. */
export function frontEnd(rate: number, denoiser: Denoiser, wet: number): FrontEnd {
  const toDenoised = rate === DENOISED_RATE ? undefined : resampler(rate, DENOISED_RATE);
  const toDecoded = resampler(DENOISED_RATE, DECODED_RATE);
  const clean = new Float32Array(FRAME);
  let before = new Float32Array(FRAME);
  let rest = new Float32Array();

  const heard = (frame: Float32Array<ArrayBuffer>): Heard => {
    const speech = denoiser.clean(frame, clean);
    // The denoiser gives each frame one frame late.
    const mixed = clean.map((sample, at) => wet * sample + (1 - wet) * (before[at] ?? 0));
    before = frame;
    const cleanLevel = decibels(powerOf(clean));
    return { speech, power: powerOf(frame), cleanLevel, sound: toDecoded(mixed) };
  };

  return {
    *frames(samples) {
      rest = joined(rest, toDenoised ? toDenoised(samples) : samples);
      while (rest.length >= FRAME) {
        const frame = rest.slice(0, FRAME);
        rest = rest.slice(FRAME);
        yield heard(frame);
      }
    },
    drop: () => (rest = new Float32Array()),
  };
}
