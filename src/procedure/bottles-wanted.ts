import { litresNow, type Facts } from './facts';
import type { KitSheet } from './kit-sheet';

/** What stays behind with the sediment and in the hose when bottling. Litres; common practice. */
const LEFT_BEHIND_LITRES = 0.3;

/** Full bottles that the wine in the ledger makes. */
export const bottlesWanted = ({ bottle }: KitSheet, facts: Facts): number =>
  Math.max(0, Math.floor(((litresNow(facts) - LEFT_BEHIND_LITRES) * 1000) / bottle.millilitres));
