import { relativeDensity } from '../domain/gravity';
import { standing } from '../domain/reading';
import { waterDensity } from '../domain/sums/water-density';
import type { Litres } from '../domain/unit';
import { bottling } from './bottles-wanted';
import { litresNow, type Facts } from './facts';
import type { KitSheet } from './kit-sheet';

/** What the ledger holds: in the vessel, drawn off for later, what both weigh in the vessel, and what to bottle them in. */
export type Holding = {
  litres: Litres;
  reserve: Litres;
  kilograms: number;
  bottles: number;
  closures: number;
  leftLitres: Litres;
};

const AT_THE_BENCH = 20;

/** The ledger's present end. Nothing while nothing is measured, or all of it is bottled. */
export function holding(sheet: KitSheet, facts: Facts): Holding | undefined {
  const litres = litresNow(facts);
  if (litres <= 0) return undefined;
  const reserve = Math.max(
    0,
    -facts.ledger.reduce((sum, line) => sum + (line.cause.startsWith('reserve') ? line.litres : 0), 0),
  ) as Litres;
  const gravity = standing(facts.readings).at(-1)?.gravity;
  const density = gravity === undefined ? sheet.start.highest : relativeDensity(gravity);
  const { bottles, corks, leftMl } = bottling(sheet, litres + reserve);
  return {
    litres,
    reserve,
    kilograms: (litres * density * waterDensity(AT_THE_BENCH)) / 1000,
    bottles,
    closures: corks,
    leftLitres: (leftMl / 1000) as Litres,
  };
}
