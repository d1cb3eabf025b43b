import { actionOf, NO_OWN_KEYS, type Keys } from '../domain/key-preferences';
import type { Command } from '../voice/commands';

/**
 * The command of a key, if it is on offer: the first is the main one, and 1 to 9 are the pads in their order. Where
 * something is asked, the way back is "no", so that two buttons can answer. `Pad` are pads that only a screen has;
 * `own` are the keys that the maker mapped.
 */
export function commandForKey<Pad extends string = never>(
  key: string,
  offered: readonly (Command | Pad)[],
  own: Keys = NO_OWN_KEYS,
): Command | Pad | undefined {
  if (/^[1-9]$/.test(key)) return offered[Number(key) - 1];
  const action = actionOf(key, own);
  if (action === undefined || action === 'ears') return undefined;
  if (action === 'main') return offered[0];
  const command = action === 'back' && offered.includes('no') ? 'no' : action;
  return offered.includes(command) ? command : undefined;
}
