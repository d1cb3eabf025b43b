/** Below this nothing is heard; digital silence counts as it. */
const LOWEST = 1e-9;

/** Decibels below full scale, of the mean square of samples within ±1. */
export const decibels = (power: number): number => 10 * Math.log10(Math.max(power, LOWEST));

export const powerOf = (samples: Float32Array): number =>
  samples.reduce((sum, sample) => sum + sample * sample, 0) / Math.max(1, samples.length);
