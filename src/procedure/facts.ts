import type { Moment } from '../domain/calendar';
import type { Passing } from '../domain/gates/passing';
import type { Judgement } from '../domain/judgement';
import type { Problem } from '../domain/problem';
import type { Instrument, Reading } from '../domain/reading';
import type { Celsius, Instant, Litres } from '../domain/unit';
import type { Check } from './check';
import type { Contents } from './contents';
import type { Mishap } from './mishap';
import type { Gate, Phase } from './phase';

/** Something that went into the wine, and when. */
export type Addition = Moment & {
  entry: number;
  sachet: string;
  contents: readonly Contents[];
  phase: Phase | Gate;
  /** Sugar that went in before dryness was proven and every sorbate was in: it has to ferment out. */
  unguarded?: true;
};

/** Something that went wrong, as it was told. `at` is when it happened. */
export type MishapTold = Moment & {
  entry: number;
  mishap: Mishap;
  place: Phase | Gate;
  sachet?: string;
  litres?: Litres;
  /** When it is looked at again; never, once all is well. */
  lookAgain?: Instant;
  /** Told by mistake, and taken back. */
  struck?: true;
};

/** A batch that was running already when the guide was told of it: how far it had come. */
export type Joined = Moment & { reached: Phase };

export type Temperature = Moment & { entry: number; celsius: Celsius };

/** A timed act's clock: a deadline, never a countdown. While it is paused only what is left is known. */
export type Clock = { startedAt: Instant; seconds: number } & (
  { running: true; endsAt: Instant } | { running: false; leftSeconds: number }
);

/** A line of the volume ledger: what came or went, in litres, and why. */
export type LedgerLine = { entry: number; cause: LedgerCause; litres: Litres };
export type LedgerCause =
  | 'must'
  | 'sample'
  | 'reserve drawn'
  | 'reserve returned'
  | 'lees'
  | 'drawn off'
  | 'top-up'
  | 'bottled'
  | 'lost'
  | 'poured back';

/** A way back that was taken: which gate sent the wine back, and for what. */
export type Return = Moment & { gate: Gate; clause: Problem['code'] };

/** All that is known of a batch, folded from its journal. `now` is the moment of judgement: an event's, or the display's. */
/** A clause that yielded to a reason, for good. */
export type Override = Moment & { question: Gate | Check; clause: string; reason: string };

/** The ladder out of a stuck ferment, from the gentlest rung. */
export const RUNGS = ['read again', 'warmed', 'roused', 'fresh starter'] as const;
export type Rung = (typeof RUNGS)[number];

export type Facts = {
  begun: Moment;
  now: Moment;
  /** The hour of the day at which the maker is usually free, for due times. */
  freeHour: number;
  /** How many events the journal holds. */
  entries: number;
  done: Readonly<Record<string, Moment>>;
  clocks: Readonly<Record<string, Clock>>;
  stirredSeconds: Readonly<Record<string, number>>;
  /** Printed names that were not found, by the act that asked for them. */
  missing: Readonly<Record<string, readonly string[]>>;
  instrument?: Instrument;
  brim?: Litres;
  bottles?: { bottles: number; closures: number; threaded: boolean };
  filled?: number;
  pitched?: Moment;
  readings: readonly Reading[];
  /** The journal's place of the reading that was taken as the baseline. */
  baseline?: number;
  temperatures: readonly Temperature[];
  additions: readonly Addition[];
  judgements: readonly Judgement[];
  ledger: readonly LedgerLine[];
  passed: Readonly<Partial<Record<Gate, Passing>>>;
  returns: readonly Return[];
  /** Millimetres from the wine to its stopper, as last measured. */
  gap?: Moment & { millimetres: number };
  /** Litres that the second vessel holds to its brim. */
  vessel?: Litres;
  sugarTests: readonly (Moment & { gramsPerLitre: number })[];
  overrides: readonly Override[];
  /** Sachets that the maker left out, each with the reason. */
  leftOut: Readonly<Record<string, string>>;
  help: readonly (Moment & { rung: Rung })[];
  away: readonly { from: Instant; until: Instant }[];
  /** When a reading was struck, by its place in the journal. */
  struckAt: Readonly<Record<number, Instant>>;
  mishaps: readonly MishapTold[];
  joined?: Joined;
  /** The journal's place at which the empty wrappers were last counted. */
  wrappersCounted: number;
};

/** What is known before the first event. */
export const nothingYet = (begun: Moment, freeHour: number): Facts => ({
  begun,
  now: begun,
  freeHour,
  entries: 0,
  done: {},
  clocks: {},
  stirredSeconds: {},
  missing: {},
  readings: [],
  temperatures: [],
  additions: [],
  judgements: [],
  ledger: [],
  passed: {},
  returns: [],
  sugarTests: [],
  overrides: [],
  leftOut: {},
  help: [],
  away: [],
  struckAt: {},
  mishaps: [],
  wrappersCounted: 0,
});

/** The same facts, looked at from another moment. Guards ask it of one moment several times, so the last is kept. */
export function asOf(facts: Facts, now: Moment): Facts {
  const known = lookedAt.get(facts);
  if (known?.now.at === now.at && known.now.offsetMinutes === now.offsetMinutes) return known;
  const then: Facts = { ...facts, now };
  lookedAt.set(facts, then);
  return then;
}

const lookedAt = new WeakMap<Facts, Facts>();

/** Litres in the main vessel now. */
export const litresNow = ({ ledger }: Facts): Litres =>
  ledger.reduce((sum, { litres }) => sum + litres, 0) as Litres;

/** How often the wine was sent back by a gate, for any of some reasons. */
export const timesReturned = ({ returns }: Facts, gate: Gate): number =>
  returns.filter((back) => back.gate === gate).length;

/** Mishaps of some kinds that stand, oldest first by the time they were told. */
export const toldOf = ({ mishaps }: Facts, ...kinds: readonly Mishap[]): MishapTold[] =>
  mishaps.filter(({ mishap, struck }) => !struck && kinds.includes(mishap));

/** Which time the wine is being bottled: the first, and once more for every time that it was poured back. */
export const nthBottling = (facts: Facts): number => toldOf(facts, 'poured back').length + 1;

/** Whether the wine is in its bottles. */
export const isBottled = (facts: Facts): boolean =>
  `fill and close ${String(nthBottling(facts))}` in facts.done;

/** Whether a sachet is in the wine. */
export const isIn = ({ additions }: Facts, sachet: string): boolean =>
  additions.some((addition) => addition.sachet === sachet);
