import { toDo } from '../act';
import type { Facts } from '../facts';
import type { KitSheet } from '../kit-sheet';
import type { Act } from '../step';

/** Washing comes before sanitising: nothing sanitises dirt. */
export const clean = (_: KitSheet, facts: Facts): Act[] => [
  toDo(facts, 'wash gear'),
  toDo(facts, 'rinse gear'),
];
