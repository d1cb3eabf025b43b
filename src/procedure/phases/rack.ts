import { base, toDo, toDoWith } from '../act';
import { litresNow, type Facts } from '../facts';
import type { KitSheet } from '../kit-sheet';
import { moves } from '../limits';
import type { Act } from '../step';

/** The reserve is drawn first, while the wine is clean of powders; then the wine leaves its lees, or stays as the sheet says. */
export const rack = (sheet: KitSheet, facts: Facts): Act[] => [
  ...(sheet.reserveLitres === undefined ? [] : [toDoWith(facts, 'draw reserve', sheet.reserveLitres)]),
  ...(moves(sheet, 'dry')
    ? movingActs(facts, 2)
    : [toDo(facts, sheet.sediment === 'stir up' ? 'stir up sediment' : 'leave sediment')]),
];

/** The move before bottling goes into bottles the same day: nobody needs to know what that vessel holds. */
export const LAST_MOVE = 3;

const measureVessel = (facts: Facts, nth: number): Act => ({
  ...base(facts, 'measure vessel', nth),
  kind: 'litres',
  of: 'vessel',
  suggested: litresNow(facts),
});

/** From one vessel to another: its room measured, clean gear again, siphon, and a look at how much arrived. */
export const movingActs = (facts: Facts, nth: number): Act[] => [
  ...(nth === LAST_MOVE ? [] : [measureVessel(facts, nth)]),
  toDo(facts, 'sanitise again', nth),
  toDo(facts, 'siphon off', nth),
  { ...base(facts, 'measure wine', nth), kind: 'litres', of: 'wine', suggested: litresNow(facts) },
];
