import { addingActsFor, base, toDo } from '../act';
import { bottlesWanted } from '../bottles-wanted';
import type { Facts } from '../facts';
import type { KitSheet } from '../kit-sheet';
import { moves } from '../limits';
import type { Act } from '../step';
import { movingActs } from './rack';

/** Bottles and closures first, then the wine off its last sediment, and then no going back. */
export const bottle = (sheet: KitSheet, facts: Facts): Act[] => [
  { ...base(facts, 'count bottles'), kind: 'bottles', wanted: bottlesWanted(sheet, facts) },
  toDo(facts, 'sanitise bottles'),
  ...(moves(sheet, 'clear') ? movingActs(facts, 3) : []),
  ...addingActsFor(sheet, facts, 'bottle', { check: 'may bottle', sealed: true }),
  { ...toDo(facts, 'fill and close'), check: 'may bottle', sealed: true },
  { ...base(facts, 'count filled'), kind: 'filled', wanted: bottlesWanted(sheet, facts) },
];
