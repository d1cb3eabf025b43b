import type { EarProblem } from './ears';

/** A microphone that is open. */
export type OpenMicrophone = {
  rate: number;
  /** A port through which its sound goes from now on, mono, in chunks of Float32 samples; the one before is left. */
  connect: () => MessagePort;
  close: () => void;
};

/** Rejects with a `MicrophoneProblem`. `lost` is called once, when it ends other than by `close`. */
export type Microphone = { open: (lost: (problem: EarProblem) => void) => Promise<OpenMicrophone> };

export class MicrophoneProblem extends Error {
  override name = 'MicrophoneProblem';
  constructor(
    readonly problem: EarProblem,
    cause?: unknown,
  ) {
    super(problem, { cause });
  }
}
