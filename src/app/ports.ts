import { createContext } from 'svelte';
import type { Moment } from '../domain/calendar';
import type { Preferences } from '../domain/preferences';
import type { Words } from '../guide/guide-text';
import type { HandsFree } from '../ui/bench/hands-free';
import type { RestOfBench } from '../ui/bench/rest-of-bench';
import type { Live, Subscribe } from '../ui/live.svelte';
import type { Voice } from '../voice/engine';
import type { Heard } from '../voice/speaker';
import type { ImportPorts } from '../workflow/import-batch';
import type { Journal } from '../workflow/journal';
import type { ChosenPreferences } from './chosen-preferences.svelte';

/** What time it is on the maker's wall, and a tick about every second. */
export type WallClock = { now: () => Moment; subscribe: Subscribe };

/** The address after the #, and the way to another. */
export type Location = { read: () => string; subscribe: Subscribe; go: (address: string) => void };

/** Files from and to the device. Nothing, where the maker picks none; a `ProblemError` where it cannot be read. */
export type Files = {
  pick: () => Promise<string | undefined>;
  save: (name: string, text: string) => void;
};

/** Puts a guide to work on a batch, with the device's voice, tones and screen, and gives back how to leave. */
export type LeadByEar = (
  words: Words,
  journal: Pick<Journal, 'report'>,
) => { hands: HandsFree; leave: () => void };

/** What the app needs of the world outside: `main.ts` hands in the adapters. */
export type Ports = {
  clock: Live<Moment>;
  address: Live<string>;
  go: (address: string) => void;
  files: Files;
  batches: ImportPorts;
  preferences: ChosenPreferences;
  /** The way to lead by ear, fetched when it is first wanted. */
  leading: () => Promise<LeadByEar>;
  /** What the first act of a batch does without, fetched while it is done, or before the bench of a batch under way. */
  restOfBench: RestOfBench;
  /** The device's voices for the language, nothing while they are looked for; and a line spoken as was chosen. */
  soundCheck: {
    voices: Live<readonly Voice[] | undefined>;
    say: (line: string) => Promise<Heard>;
    hush: () => void;
  };
  /** Whether the browser promises to understand speech on the device. */
  browserHears: () => Promise<boolean>;
  /** Whether the browser has promised to keep what is stored, and the one time at which it is asked to. */
  storage: { isPromised: () => Promise<boolean>; askToKeep: () => Promise<void> };
  /** Does what nobody waits for, once the screen is shown. */
  onceShown: (work: () => void) => void;
  print: () => void;
  /** A number that nobody can foresee, from which chance that can be repeated begins. */
  chance: () => number;
  /** Tells the page itself which look was chosen. */
  show: (theme: Preferences['theme']) => void;
  /** Puts a text on the clipboard; whether the device took it. */
  copy: (text: string) => Promise<boolean>;
};

export const [ports, handInPorts] = createContext<Ports>();
