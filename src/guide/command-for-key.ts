import type { Command } from '../voice/commands';

/** What a key does: the main command, or one by its name. */
export type Keys = Readonly<Record<string, Command | 'main'>>;

/** Keys as they come from a keyboard, a foot pedal, a slide clicker or an earphone's button. The maker may map others. */
const FIRST_KEYS: Keys = {
  ' ': 'main',
  Enter: 'main',
  PageDown: 'main',
  MediaPlayPause: 'main',
  MediaPlay: 'main',
  MediaTrackNext: 'main',
  PageUp: 'back',
  Backspace: 'back',
  MediaTrackPrevious: 'back',
  r: 'again',
  l: 'how long',
};

/**
 * The command of a key, if it is on offer: the first is the main one, and 1 to 9 are the pads in their order. Where
 * something is asked, the way back is "no", so that two buttons can answer. `Own` are pads that only a screen has.
 */
export function commandForKey<Own extends string = never>(
  key: string,
  offered: readonly (Command | Own)[],
  keys: Keys = FIRST_KEYS,
): Command | Own | undefined {
  if (/^[1-9]$/.test(key)) return offered[Number(key) - 1];
  const mapped = keys[key] ?? keys[key.toLowerCase()];
  const wanted = mapped === 'back' && offered.includes('no') ? 'no' : mapped;
  const command = wanted === 'main' ? offered[0] : wanted;
  return command !== undefined && offered.includes(command) ? command : undefined;
}
