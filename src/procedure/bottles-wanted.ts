import { bottlesFrom } from '../domain/sums/bottles-from';
import { litresNow, type Facts } from './facts';
import type { KitSheet } from './kit-sheet';

/** What stays behind with the sediment and in the hose when bottling. Litres; common practice. */
const LEFT_BEHIND_LITRES = 0.3;
/** As much as the sum takes, and more than any batch. */
const MOST_LITRES = 100;

/** Bottles that so much wine fills on this sheet, closures to have at hand, and what does not fill another. */
export const bottling = ({ bottle }: KitSheet, litres: number): ReturnType<typeof bottlesFrom> =>
  bottlesFrom({
    litres: Math.min(MOST_LITRES, Math.max(0, litres)),
    bottleMl: bottle.millilitres,
    lossLitres: LEFT_BEHIND_LITRES,
  });

/** Full bottles that the wine in the ledger makes. */
export const bottlesWanted = (sheet: KitSheet, facts: Facts): number =>
  bottling(sheet, litresNow(facts)).bottles;
