import type { KitSheet } from '../../src/procedure/kit-sheet';
import { builtInSheets } from '../../src/procedure/kits';
import type { Place } from '../../src/procedure/phase';
import { Maker } from './maker';
import { Play } from './play';

/** Most scenes play with this kit: it has everything. */
const [hedge] = builtInSheets.filter(({ id }) => id === 'hedge-lantern') as [KitSheet];

/** A careful maker who has come as far as an act. */
export function makerAt(place: Place, act?: string): Maker {
  const maker = new Maker(hedge).goTowards(place);
  while (act !== undefined && maker.act?.id !== act) maker.answer();
  return maker;
}

/** The guide opens where a careful maker has come to; what it says on opening is left out. */
export async function at(place: Place, act?: string): Promise<Play> {
  const play = Play.with(makerAt(place, act));
  await play.hearsOut();
  play.script.length = 0;
  return play;
}

/** A script without its times. */
export const untimed = ({ script }: Play): string[] => script.map((line) => line.replace(/^\d+:\d\d /, ''));
