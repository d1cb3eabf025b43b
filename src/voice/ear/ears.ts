import type { Hearing } from './decoder';
import type { Room } from './room';

/**
 * `asking`: the device asks its owner for the microphone. `fetching`: what hearing takes comes by the network, once.
 * `shut`: we speak. `failed`: nothing is heard until they are turned on again.
 */
export type EarState = 'off' | 'asking' | 'fetching' | 'starting' | 'listening' | 'shut' | 'failed';

export type EarProblem =
  | 'no microphone'
  | 'not allowed'
  | 'microphone in use'
  | 'microphone lost'
  | 'fetch broken'
  | 'not supported'
  | 'engine broken'
  | 'not a grammar';

export type EarNews =
  | { type: 'state'; state: EarState; problem?: EarProblem }
  /** Bytes so far, of all. */
  | { type: 'progress'; done: number; total: number }
  /** An utterance is over. Where no sentence of the grammar was found in it there is no hearing. */
  | { type: 'heard'; hearing: Hearing | undefined; snr: number; seconds: number }
  /** Five times a second while they listen. */
  | ({ type: 'room' } & Room);

/** Hears what is said near the phone, on the phone. */
export type Ears = {
  readonly state: EarState;
  /** Belongs inside a touch. Settles once they listen, are turned off, or failed; never rejects. */
  turnOn: () => Promise<void>;
  turnOff: () => void;
  /** What may be heard from now on; words begun before are forgotten. Holds until the next, turned on or off. */
  listenFor: (grammar: string, against?: string) => void;
  /** Hears nothing from this very moment, and drops what was being said. */
  shut: () => void;
  open: () => void;
  /** Tells what happens from now on; gives how to stop. */
  subscribe: (listener: (news: EarNews) => void) => () => void;
};
