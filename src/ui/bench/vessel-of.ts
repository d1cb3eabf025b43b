import type { Facts } from '../../procedure/facts';
import type { KitSheet } from '../../procedure/kit-sheet';
import { COURSE, type Place } from '../../procedure/phase';

/** What stands on the bench: enough to draw it. */
export type Standing = {
  shape: 'bucket' | 'carboy';
  brim: number;
  cloud: number;
  sediment: boolean;
  closed: boolean;
};

/** Where the brim was not measured, a first vessel is drawn with the usual room for foam, a glass one nearly full. */
const ROOM_FOR_FOAM = 1.3;
const ROOM_IN_GLASS = 1.05;

/** The vessel that holds the wine at a place, and how the wine looks in it. */
export function vesselOf(place: Place, sheet: KitSheet, facts: Facts): Standing {
  const moved = ['siphon off 1', 'siphon off 2', 'siphon off 3'].some((act) => act in facts.done);
  const is = (from: Place, to: Place) => isBetween(place, from, to);
  return {
    shape: moved ? 'carboy' : 'bucket',
    brim: moved ? sheet.batchLitres * ROOM_IN_GLASS : (facts.brim ?? sheet.batchLitres * ROOM_FOR_FOAM),
    cloud: is('prepare', 'top up')
      ? 1
      : is('clear', 'proving clear') &&
          facts.judgements.findLast(({ what }) => what === 'clear')?.yes !== true
        ? 0.6
        : 0,
    sediment: is('ferment', 'proving dry') || is('clear', 'proving still'),
    closed: is('ferment', 'proving dry') || is('clear', 'proving still'),
  };
}

const rank = (place: Place): number => (COURSE as readonly Place[]).indexOf(place);

function isBetween(place: Place, from: Place, to: Place): boolean {
  const at = rank(place);
  return at >= rank(from) && at <= rank(to);
}
