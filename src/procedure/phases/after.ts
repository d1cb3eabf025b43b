import { hoursAfter, onDay } from '../../domain/calendar';
import { base, toDo } from '../act';
import { nthBottling, type Facts } from '../facts';
import type { KitSheet } from '../kit-sheet';
import type { Act } from '../step';

const UPRIGHT_HOURS = 24;
const CLOSURE_LOOK_DAYS = [7, 14, 42];
export const FIRST_TASTE_DAYS = 28;

/** Corks grip while the bottles stand; caps need no standing. */
export function stand({ bottle }: KitSheet, facts: Facts): Act[] {
  const nth = nthBottling(facts);
  const filled = facts.done[`count filled ${String(nth)}`] ?? facts.now;
  const until = hoursAfter(filled.at, UPRIGHT_HOURS);
  return bottle.closure === 'cork'
    ? [{ ...base(facts, 'stand upright', nth), kind: 'wait', until, due: until }]
    : [];
}

export const label = (_: KitSheet, facts: Facts): Act[] => [toDo(facts, 'label bottles', nthBottling(facts))];

export const washUp = (_: KitSheet, facts: Facts): Act[] => [toDo(facts, 'wash up gear', nthBottling(facts))];

/** Laid down, looked at while a mistake would show itself, and tasted once. */
export function rest(_: KitSheet, facts: Facts): Act[] {
  const nth = nthBottling(facts);
  const from = facts.done[`lay down ${String(nth)}`] ?? facts.now;
  const looks = CLOSURE_LOOK_DAYS.map((days, index): Act => ({
    ...base(
      facts,
      'look at closures',
      index + 1,
      nth === 1 ? undefined : `${String(nth)}.${String(index + 1)}`,
    ),
    kind: 'judge',
    what: 'closures',
    due: onDay(from, days, facts.freeHour),
  }));
  const taste: Act = {
    ...toDo(facts, 'first taste', nth),
    due: onDay(from, FIRST_TASTE_DAYS, facts.freeHour),
  };
  const byDay = [...looks, taste].toSorted((a, b) => (a.due ?? 0) - (b.due ?? 0));
  return [toDo(facts, 'lay down', nth), ...byDay];
}
