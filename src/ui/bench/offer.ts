import { commandForKey } from '../../guide/command-for-key';
import type { Keys } from '../../domain/key-preferences';
import type { BenchText } from '../../text/text';
import type { Command } from '../../voice/commands';

/** How something was pressed. */
export type Press = 'touch' | 'key';

/** Something that may be said or pressed now. The first is also the main key's, and its pad is the largest. */
export type Offer = {
  /** Its words: on the pad, and to the ear. */
  phrase: string;
  /** The phrase that works by voice, where the pad shows an answer in full. */
  says?: string;
  /** The guide's command, where it is one. */
  command?: Command;
  main?: boolean;
  /** Shown and named, but not to be had yet. */
  disabled?: boolean;
  /** Folded away, on every screen or on a narrow one, until the maker asks what can be said. Its key works all the same. */
  folded?: 'always' | 'where narrow' | undefined;
  onpress: (how: Press) => void;
};

/** An offer that only the screen has. */
export const offer = (
  text: BenchText,
  pad: keyof BenchText['bench']['pads'],
  onpress: (how: Press) => void,
  rules: Pick<Offer, 'main' | 'disabled'> = {},
): Offer => ({ phrase: text.bench.pads[pad], onpress, ...rules });

const nameOf = ({ command, phrase }: Offer): string => command ?? phrase;

/** The offer that a key presses, as the maker mapped it. Nothing is ever guessed, and nothing that is not on offer yet is pressed. */
export function offerFor(key: string, offers: readonly Offer[], own: Keys): Offer | undefined {
  const named = commandForKey<string>(key, offers.map(nameOf), own);
  const chosen = offers.find((each) => nameOf(each) === named);
  return chosen?.disabled ? undefined : chosen;
}
