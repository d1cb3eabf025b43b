import { COURSE, type Gate, type Phase } from '../phase';

/** What a mishap changes in the facts. Whatever it is not said to change stays as the journal has it. */
export type Change =
  | 'nothing'
  | 'sachet in' // a sachet is in the wine, whatever its turn
  | 'sachet not in' // one that was taken to be in is not
  | 'sachet left out'
  | 'litres lost'
  | 'filled anew' // so much stands in the vessel, whatever was measured
  | 'topped up'
  | 'pitched again'
  | 'moved early'
  | 'instrument gone'
  | 'glass in wine'
  | 'stirred up'
  | 'bottle lost'
  | 'poured back';

/** Something that goes wrong: where it can be said, what must be told beside it, what it changes, when to look again. */
export type MishapRules = {
  at: readonly (Phase | Gate)[];
  change: Change;
  /** Without this it cannot be told. */
  asks?: 'sachet' | 'litres';
  /** This may be told too. */
  mayTell?: 'sachet' | 'litres';
  /** It changes what is in the wine: read back first, and never taken from a voice. */
  changesWine: boolean;
  lookAgainHours: number;
};

/** Every phase and gate from one to another, both included. */
export const between = (first: Phase | Gate, last: Phase | Gate): readonly (Phase | Gate)[] =>
  COURSE.slice(COURSE.indexOf(first), COURSE.indexOf(last) + 1);
