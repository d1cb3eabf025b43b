import { addingActsFor, base, toDo } from '../act';
import type { Facts } from '../facts';
import type { KitSheet } from '../kit-sheet';
import { judge } from '../judge';
import type { Act } from '../step';

/** The must's warmth, the yeast by its name, the lid and the airlock. A temperature outside the range is asked again. */
export const pitch = (sheet: KitSheet, facts: Facts): Act[] => [
  {
    ...base(facts, 'take must temperature'),
    kind: 'temperature',
    of: 'must',
    done: facts.pitched !== undefined || judge('warm enough to pitch', sheet, facts).open,
  },
  ...addingActsFor(sheet, facts, 'pitch', { check: 'warm enough to pitch' }),
  toDo(facts, 'close with airlock'),
];
