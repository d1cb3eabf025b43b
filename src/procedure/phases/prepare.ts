import { isTooSmall } from '../../domain/gates/box-complete';
import type { Litres } from '../../domain/unit';
import { base, toDo } from '../act';
import type { Facts } from '../facts';
import type { KitSheet } from '../kit-sheet';
import type { Act } from '../step';

/** Everything that is cheap to get right before a bag is opened. A vessel that is too small is followed by a larger one. */
export const prepare = (sheet: KitSheet, facts: Facts): Act[] => [
  { ...base(facts, 'lay out sachets'), kind: 'account', sachets: sheet.sachets },
  { ...base(facts, 'check hydrometer'), kind: 'instrument' },
  {
    ...base(facts, 'measure brim'),
    kind: 'litres',
    of: 'brim',
    suggested: Math.round(sheet.batchLitres * 1.3) as Litres,
    done: facts.brim !== undefined && !isTooSmall(facts.brim, sheet.batchLitres as Litres),
  },
  { ...toDo(facts, 'choose a place'), check: 'box complete' },
];
