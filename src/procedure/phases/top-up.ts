import type { Litres } from '../../domain/unit';
import { base, toDoWith } from '../act';
import type { Facts } from '../facts';
import type { KitSheet } from '../kit-sheet';
import { lap } from '../selections';
import type { Act } from '../step';

/** The reserve comes home, the vessel is filled to below its stopper, and then the baseline: after the last addition. */
export const topUp = (sheet: KitSheet, facts: Facts): Act[] => [
  ...(sheet.reserveLitres === undefined ? [] : [toDoWith(facts, 'return reserve', sheet.reserveLitres)]),
  { ...base(facts, 'top up'), kind: 'litres', of: 'top-up', suggested: 0 as Litres },
  { ...base(facts, 'read baseline', lap(facts)), kind: 'reading' },
];
