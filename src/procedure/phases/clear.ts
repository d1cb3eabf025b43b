import { onDay } from '../../domain/calendar';
import type { Instant } from '../../domain/unit';
import { addingActsFor, base, toDo } from '../act';
import type { Facts } from '../facts';
import { clearingAct } from '../judge';
import type { KitSheet } from '../kit-sheet';
import { lap, lastStirredUp } from '../selections';
import type { Act } from '../step';

/** Dark, still, under airlock; then a first look on the day before bottling. Cloudy is looked at again the next day. */
export function clear(sheet: KitSheet, facts: Facts): Act[] {
  const since = facts.done[clearingAct(facts)];
  const looks = facts.judgements.filter(
    ({ what, at }) => what === 'clear' && since !== undefined && at >= since.at,
  );
  const last = looks.findLast(({ at }) => at >= lastStirredUp(facts));
  const planned = since && onDay(since, Math.max(sheet.clearingDays, WEEK) - 1, facts.freeHour);
  const stirred = lastStirredUp(facts);
  const again = stirred > 0 ? onDay({ ...facts.now, at: stirred as Instant }, 1, facts.freeHour) : 0;
  const due = last ? onDay(last, 1, facts.freeHour) : planned && (Math.max(planned, again) as Instant);
  return [
    toDo(facts, 'leave to clear', lap(facts)),
    ...addingActsFor(sheet, facts, 'clear'),
    {
      ...base(
        facts,
        'look through the wine',
        looks.length + 1,
        `${String(lap(facts))}.${String(looks.length + 1)}`,
      ),
      kind: 'judge',
      what: 'clear',
      ...(due === undefined ? {} : { due }),
      done: last?.yes === true,
    },
  ];
}

/** The last gate wants its readings a week apart, so no sheet's bottling day comes before that. */
const WEEK = 7;
