import type { Gravity } from '../domain/gravity';
import type { Judged } from '../domain/judgement';
import type { Problem } from '../domain/problem';
import type { Instant } from '../domain/unit';
import type { Verdict } from '../domain/verdict';
import type { Clock } from '../procedure/facts';
import type { Sachet } from '../procedure/kit-sheet';
import type { Gate, Place } from '../procedure/phase';
import type { Act } from '../procedure/step';
import type { StepWords } from '../text/text';
import type { Remedy } from '../workflow/remedies';
import type { Frame } from './frame';

/** An act and its words. */
export type ActInWords = { act: Act; words: StepWords };

/** What the guide knows of the batch at one moment: worked out anew from a snapshot, never kept. */
export type Situation = {
  place: Place;
  /** The current act is the n-th of so many in this phase. */
  nth: number;
  of: number;
  /** What is to be done now; nothing at a gate, at an end, or before the next act is due. */
  now?: ActInWords;
  /** What comes next, and when, where it is not due yet. */
  next?: ActInWords & { due: Instant };
  clock?: Clock;
  /** At a gate. */
  gate?: { gate: Gate; verdict: Verdict; remedy?: Remedy };
  /** What the hydrometer can plausibly read here. */
  plausible: { lowest: Gravity; highest: Gravity };
  /** What keeps the act from counting as done, or made it be asked again. */
  obstacle?: Problem;
  /** The question of eye, ear or hand that is open now. */
  asks?: Judged;
  /** The names of the acts of this phase that are done, in order. */
  done: readonly string[];
  /** The names on the empty wrappers that should lie there at the end of a visit. */
  wrappers: readonly string[];
  /** The sheet's sachets, to be named. */
  sachets: readonly Sachet[];
  /** Said before a run of acts begins. */
  frame?: Frame;
  /** The maker comes back to something that was begun. */
  resumed: boolean;
  /** How many events the batch holds, and when the last one was. */
  entries: number;
  lastAt: Instant;
};
