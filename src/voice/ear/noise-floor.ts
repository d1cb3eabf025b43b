const FRAMES_A_BLOCK = 10;
/** How far back the quietest moment is looked for: speech pauses within three seconds. */
const BLOCKS = 30;
/** The quietest of thirty tenths of a second of steady noise lies this much below its mean. */
const BIAS = 1.25;

/** The power of the noise that is always there, from the power of frames: that of the quietest moment just past. */
export type NoiseFloor = { next: (power: number) => void; power: () => number | undefined };

export function noiseFloor(): NoiseFloor {
  const blocks: number[] = [];
  let sum = 0;
  let frames = 0;
  return {
    next(power) {
      sum += power;
      if (++frames < FRAMES_A_BLOCK) return;
      blocks.push(sum / frames);
      if (blocks.length > BLOCKS) blocks.shift();
      sum = frames = 0;
    },
    power: () => (blocks.length > 0 ? Math.min(...blocks) * BIAS : undefined),
  };
}
