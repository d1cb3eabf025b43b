import type { Litres } from '../../domain/unit';
import { base, toDoWith } from '../act';
import type { Facts } from '../facts';
import { judge } from '../judge';
import type { KitSheet } from '../kit-sheet';
import { lap } from '../selections';
import type { Act } from '../step';

/** The reserve comes home, the vessel is filled to below its stopper, and then the baseline: after the last addition. */
export const topUp = (sheet: KitSheet, facts: Facts): Act[] => [
  ...(sheet.reserveLitres === undefined ? [] : [toDoWith(facts, 'return reserve', sheet.reserveLitres)]),
  ...fillUp(sheet, facts),
  { ...base(facts, 'read baseline', lap(facts)), kind: 'reading' },
];

/** Topped up and measured, and once more while the gap is wider than the sheet wants and no reason was given. */
function fillUp(sheet: KitSheet, facts: Facts): Act[] {
  const full = judge('topped up', sheet, facts).open;
  const measured = Object.keys(facts.done).filter((act) => act.startsWith('measure gap')).length;
  const rounds = Math.max(1, measured + (full || measured === 0 ? 0 : 1));
  return Array.from({ length: rounds }, (_, index) => index + 1).flatMap((nth): Act[] => [
    {
      ...base(facts, 'top up', nth),
      kind: 'litres',
      of: 'top-up',
      suggested: 0 as Litres,
      ...(full && nth > measured ? { done: true } : {}),
    },
    { ...base(facts, 'measure gap', nth), kind: 'gap', atMost: sheet.stopperMillimetres },
  ]);
}
