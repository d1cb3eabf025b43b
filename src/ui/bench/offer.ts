import type { Text } from '../../text/text';

/** How something was pressed. */
export type Press = 'touch' | 'key';

/** Something that may be said or pressed now. The first that is `main` is also the space bar's. */
export type Offer = {
  /** Its words: on the pad, and later to the ear. */
  phrase: string;
  main?: boolean;
  /** Shown and named, but not to be had yet. */
  disabled?: boolean;
  onpress: (how: Press) => void;
};

/** An offer in the words of a command. */
export const offer = (
  text: Text,
  command: keyof Text['bench']['pads'],
  onpress: (how: Press) => void,
  rules: Pick<Offer, 'main' | 'disabled'> = {},
): Offer => ({ phrase: text.bench.pads[command], onpress, ...rules });

const MAIN_KEYS: ReadonlySet<string> = new Set([' ', 'Enter', 'PageDown']);

/** The offer that a key presses: the main one, or the n-th of the row. Nothing else is ever guessed. */
export function offerFor(key: string, offers: readonly Offer[]): Offer | undefined {
  const chosen = MAIN_KEYS.has(key)
    ? offers.find(({ main }) => main)
    : /^[1-9]$/.test(key)
      ? offers[Number(key) - 1]
      : undefined;
  return chosen?.disabled ? undefined : chosen;
}
