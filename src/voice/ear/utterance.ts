import { ENDPOINTING } from './endpointer';

/** Frames kept from before the first sound, and after the last: a soft start and a soft end belong to the words. */
const BEFORE = 25;
const AFTER = ENDPOINTING.pause;
/** Kept while it is quiet: what comes before the first sound, and the frames it takes to be sure of it. */
const KEPT = BEFORE + 15;
const FULL_SCALE = 32_767;

/** The sound of what is being said, frame by frame. */
export type Utterance = {
  add: (frame: Float32Array) => void;
  /** It began so many frames ago. */
  begin: (past: number) => void;
  /** Its samples if it ended so many frames ago and its first `lead` frames were none of it, a little before and after. */
  samples: (hung: number, lead: number) => Int16Array;
  clear: () => void;
};

export function utterance(): Utterance {
  let frames: Float32Array[] = [];
  let isGoing = false;
  return {
    add(frame) {
      frames.push(frame);
      if (!isGoing && frames.length > KEPT) frames.shift();
    },
    begin(past) {
      isGoing = true;
      frames = frames.slice(-(past + BEFORE));
    },
    samples: (hung, lead) => samplesOf(frames.slice(lead, frames.length - Math.max(0, hung - AFTER))),
    clear() {
      frames = [];
      isGoing = false;
    },
  };
}

function samplesOf(frames: readonly Float32Array[]): Int16Array {
  const samples = new Int16Array(frames.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const frame of frames)
    for (const value of frame) samples[at++] = Math.round(Math.max(-1, Math.min(1, value)) * FULL_SCALE);
  return samples;
}
