import { createContext } from 'svelte';
import type { Moment } from '../domain/calendar';
import type { Live, Subscribe } from '../ui/live.svelte';

/** What time it is on the maker's wall, and a tick about every second. */
export type WallClock = { now: () => Moment; subscribe: Subscribe };

/** Files from and to the device. Nothing, where the maker picks none; a `ProblemError` where it cannot be read. */
export type Files = {
  pick: () => Promise<string | undefined>;
  save: (name: string, text: string) => void;
};

/** What the screens need of the world outside. `app/` hands in the adapters. */
export type Ports = { clock: Live<Moment>; files: Files };

export const [ports, handInPorts] = createContext<Ports>();
