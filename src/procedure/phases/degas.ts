import type { Celsius } from '../../domain/unit';
import { base, toStir } from '../act';
import { timesReturned, type Facts } from '../facts';
import type { KitSheet } from '../kit-sheet';
import type { Act } from '../step';

/** The sheet's rounds, those the gas test asked for, and one for each time the last gate sent the wine back. */
export const degas = (sheet: KitSheet, facts: Facts): Act[] => [
  ...stirsOutGas(sheet, facts).filter(({ nth }) => !sheet.degas.first || nth > sheet.degas.rounds),
  ...warmForTheGas(facts),
];

/** Every round of stirring so far. */
export function stirsOutGas({ degas }: KitSheet, facts: Facts): Act[] {
  const extra =
    Math.min(MOST_EXTRA_ROUNDS, timesReturned(facts, 'proving gas-free')) +
    timesReturned(facts, 'proving still');
  return Array.from({ length: degas.rounds + extra }, (_, index) =>
    toStir(facts, 'stir out gas', degas.seconds, index + 1, degas.reverseSeconds),
  );
}

/** After the sheet's rounds and two more, stirring only lets in air: then warmth is what drives the gas out. */
export const MOST_EXTRA_ROUNDS = 2;
export const WARM_FOR_GAS = 20 as Celsius;

/** Once for every time that the gas test sent the wine back after that: warmed under its airlock, and measured warm. */
function warmForTheGas(facts: Facts): Act[] {
  const back = facts.returns.filter(({ gate }) => gate === 'proving gas-free').slice(MOST_EXTRA_ROUNDS);
  return back.map(({ at }, index): Act => {
    const warm = facts.temperatures.some((taken) => taken.at >= at && taken.celsius >= WARM_FOR_GAS);
    return { ...base(facts, 'warm for the gas', index + 1), kind: 'temperature', of: 'wine', done: warm };
  });
}
