import { base, toDo } from '../act';
import type { Facts } from '../facts';
import type { KitSheet } from '../kit-sheet';
import type { Act } from '../step';

/** Contact time where the product's label is silent; common practice. */
const CONTACT_SECONDS = 600;

/** Everything that will touch the must. */
export const sanitise = (_: KitSheet, facts: Facts): Act[] => [
  toDo(facts, 'mix sanitiser'),
  { ...base(facts, 'sanitiser contact'), kind: 'timer', seconds: CONTACT_SECONDS },
  toDo(facts, 'drain gear'),
];
