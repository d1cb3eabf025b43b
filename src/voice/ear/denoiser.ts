/** Samples of one frame that a denoiser works on: a hundredth of a second. */
export const FRAME = 480;
/** What it works on: 48,000 samples a second. */
export const DENOISED_RATE = 48_000;

export type Denoiser = {
  /** Writes the frame without its noise into `to`, samples within ±1, and tells how likely it is speech (0 to 1). */
  clean: (frame: Float32Array, to: Float32Array) => number;
};
