import type { EarProblem, EarState } from '../../voice/ear/ears';

/** The ears as a screen shows them. */
export type EarShown = {
  state: EarState;
  /** They were never turned on on this device. */
  isNew: boolean;
  problem?: EarProblem | undefined;
  /** How much of what hearing takes has come, 0 to 1. */
  progress?: number | undefined;
  /** How loud it is just now, and the noise that is always there: dB below full scale. */
  level: number;
  noise: number;
  /** Words are often missed or mistaken now. */
  unreliable: boolean;
};

/** Loudest and softest that a meter shows, in dB below full scale. */
const SOFTEST = -60;
const LOUDEST = -10;

/** How far a meter of so many bars is filled. */
export const barsOf = (decibels: number, bars: number): number =>
  Math.max(0, Math.min(bars, Math.round(((decibels - SOFTEST) / (LOUDEST - SOFTEST)) * bars)));
