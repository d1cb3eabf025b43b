import { createContext } from 'svelte';
import type { Preferences } from '../../domain/preferences';
import type { Facts } from '../../procedure/facts';
import type { KitSheet } from '../../procedure/kit-sheet';
import type { Formats } from '../../text/formats';
import type { Text } from '../../text/text';

/** What every part of the page reads: the batch, and how this maker's numbers are written. */
export type Desk = {
  readonly sheet: KitSheet;
  readonly facts: Facts;
  readonly text: Text;
  readonly formats: Formats;
  readonly preferences: Preferences;
};

export const [getDesk, setDesk] = createContext<Desk>();
