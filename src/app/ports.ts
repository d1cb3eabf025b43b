import { createContext } from 'svelte';
import type { Moment } from '../domain/calendar';
import type { Live, Subscribe } from '../ui/live.svelte';
import type { ImportPorts } from '../workflow/import-batch';
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

/** What the app needs of the world outside: `main.ts` hands in the adapters. */
export type Ports = {
  clock: Live<Moment>;
  address: Live<string>;
  go: (address: string) => void;
  files: Files;
  batches: ImportPorts;
  preferences: ChosenPreferences;
  /** Whether the browser has promised to keep what is stored, and the one time at which it is asked to. */
  storage: { isPromised: () => Promise<boolean>; askToKeep: () => Promise<void> };
  print: () => void;
};

export const [ports, handInPorts] = createContext<Ports>();
