import { addingActsFor, base, toDo } from '../act';
import { bottlesWanted } from '../bottles-wanted';
import { isBottled, nthBottling, type Facts } from '../facts';
import { judge } from '../judge';
import type { KitSheet } from '../kit-sheet';
import { moves } from '../limits';
import type { Act } from '../step';
import { LAST_MOVE, movingActs } from './rack';

/** Bottles and closures first, then the wine off its last sediment, and then no going back. Once more for wine that came back. */
export function bottle(sheet: KitSheet, facts: Facts): Act[] {
  const nth = nthBottling(facts);
  return [
    countBottles(sheet, facts, nth),
    toDo(facts, 'sanitise bottles', nth),
    ...(moves(sheet, 'clear') ? movingActs(facts, LAST_MOVE) : []),
    ...addingActsFor(sheet, facts, 'bottle', { check: 'may bottle', sealed: true }),
    { ...toDo(facts, 'fill and close', nth), check: 'may bottle', sealed: true },
    { ...base(facts, 'count filled', nth), kind: 'filled', wanted: bottlesWanted(sheet, facts) },
  ];
}

/** Counted again until there are enough, and no cork for a bottle with a screw thread. Once they are filled it is too late to ask. */
function countBottles(sheet: KitSheet, facts: Facts, nth: number): Act {
  const act = base(facts, 'count bottles', nth);
  const done = act.done && (isBottled(facts) || judge('bottles ready', sheet, facts).open);
  return { ...act, kind: 'bottles', wanted: bottlesWanted(sheet, facts), done };
}
