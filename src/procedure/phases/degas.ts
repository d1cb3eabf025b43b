import { toStir } from '../act';
import { timesReturned, type Facts } from '../facts';
import type { KitSheet } from '../kit-sheet';
import type { Act } from '../step';

/** The sheet's rounds, those the gas test asked for, and one for each time the last gate sent the wine back. */
export const degas = (sheet: KitSheet, facts: Facts): Act[] =>
  sheet.degas.first
    ? stirsOutGas(sheet, facts).filter(({ nth }) => nth > sheet.degas.rounds)
    : stirsOutGas(sheet, facts);

/** Every round of stirring so far. */
export function stirsOutGas({ degas }: KitSheet, facts: Facts): Act[] {
  const extra = timesReturned(facts, 'proving gas-free') + timesReturned(facts, 'proving still');
  return Array.from({ length: degas.rounds + extra }, (_, index) =>
    toStir(facts, 'stir out gas', degas.seconds, index + 1, degas.reverseSeconds),
  );
}
