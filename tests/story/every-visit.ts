import { nextFreeHour } from '../../src/domain/calendar';
import type { KitSheet } from '../../src/procedure/kit-sheet';
import { followByEar } from './follow-by-ear';
import { Maker } from './maker';
import { Play } from './play';

export type Visit = { title: string; script: readonly string[] };

/** A whole batch by ear: every visit to it, from the box to the first taste. The page is closed in between. */
export async function everyVisit(sheet: KitSheet): Promise<Visit[]> {
  const maker = new Maker(sheet);
  const visits: Visit[] = [];
  while (maker.place !== 'finished' && visits.length < 60) {
    const place = maker.place;
    const play = Play.with(maker);
    await followByEar(play);
    play.close();
    visits.push({ title: `${String(visits.length + 1).padStart(2, '0')} ${place}`, script: play.script });
    const back = play.comesBack;
    if (back === undefined) break;
    maker.waitUntil(nextFreeHour({ ...maker.now, at: back }, 18));
  }
  return visits;
}
