import type { Facts } from '../../procedure/facts';
import type { KitSheet } from '../../procedure/kit-sheet';
import { COURSE, type Place } from '../../procedure/phase';
import { vesselNow } from '../../procedure/selections';
import { ROOM_IN_GLASS } from '../drawings/profile';
import { sedimentOf } from './sediment-of';

/** What stands on the bench: enough to draw it. */
export type Standing = {
  shape: 'bucket' | 'carboy';
  brim: number;
  cloud: number;
  /** Litres of sediment. */
  sediment: number;
  closed: boolean;
};

/** Where the brim was not measured, a first vessel is drawn with the usual room for foam. */
const ROOM_FOR_FOAM = 1.3;

/** The vessel that holds the wine at a place, and how the wine looks in it. */
export function vesselOf(place: Place, sheet: KitSheet, facts: Facts): Standing {
  const moved = ['siphon off 1', 'siphon off 2', 'siphon off 3'].some((act) => act in facts.done);
  const usual = sheet.batchLitres * (moved ? ROOM_IN_GLASS : ROOM_FOR_FOAM);
  return {
    shape: moved ? 'carboy' : 'bucket',
    brim: vesselNow(facts) ?? usual,
    cloud: cloudAt(place, facts),
    sediment: sedimentOf(sheet, facts),
    closed: isBetween(place, 'ferment', 'proving dry') || isBetween(place, 'clear', 'proving still'),
  };
}

/** From 1, milky, to 0, bright: juice and ferment; the haze after the powders; half fallen while it clears; bright once it was seen to be. */
export function cloudAt(place: Place, facts: Facts): number {
  if (isBetween(place, 'prepare', 'proving dry')) return 1;
  if (isBetween(place, 'rack', 'top up')) return 0.8;
  const seen = facts.judgements.findLast(({ what }) => what === 'clear')?.yes === true;
  return isBetween(place, 'clear', 'proving clear') && !seen ? 0.5 : 0;
}

/** A cloud in words, and a layer of sediment: thick from two parts in a hundred of the batch. */
export const cloudWord = (cloud: number): 'cloudy' | 'hazy' | 'bright' =>
  cloud > HAZY ? 'cloudy' : cloud > 0 ? 'hazy' : 'bright';
export const sedimentWord = (sediment: number, { batchLitres }: KitSheet): 'none' | 'thin' | 'thick' =>
  sediment === 0 ? 'none' : sediment < THICK * batchLitres ? 'thin' : 'thick';
const HAZY = 0.5;
const THICK = 0.02;

/** Litres that are drawn off, kept apart, and not yet back. */
export const reserveOf = ({ ledger }: Facts): number =>
  0 -
  ledger
    .filter(({ cause }) => cause === 'reserve drawn' || cause === 'reserve returned')
    .reduce((sum, { litres }) => sum + litres, 0);

const rank = (place: Place): number => (COURSE as readonly Place[]).indexOf(place);

function isBetween(place: Place, from: Place, to: Place): boolean {
  const at = rank(place);
  return at >= rank(from) && at <= rank(to);
}
