import { hoursAfter, onDay } from '../../domain/calendar';
import { heldBack } from '../../domain/gates/box-complete';
import { standing } from '../../domain/reading';
import type { Instant, Litres } from '../../domain/unit';
import { addingActsFor, base, toDo, toDoWith } from '../act';
import type { Facts } from '../facts';
import { judge } from '../judge';
import type { KitSheet } from '../kit-sheet';
import { earlyMoveAt } from '../limits';
import { comesAfter } from '../phase';
import { readingsTowardsDry } from '../schedule';
import { dayOf, momentOf, readingsOfFerment } from '../selections';
import type { Act } from '../step';
import { movingActs } from './rack';

const LOOK_AFTER_HOURS = 24;
const LOOK_AGAIN_AFTER_HOURS = 12;
const FIRST_READING_DAY = 5;

/** Is it alive, how far is it, the early move where there is one, and the readings that end on the sheet's day. */
export function ferment(sheet: KitSheet, facts: Facts): Act[] {
  return [
    ...lookForLife(facts),
    ...addingActsFor(sheet, facts, 'ferment'),
    ...readOnTheWay(sheet, facts),
    ...heldBackWater(sheet, facts),
    ...moveEarly(sheet, facts),
    ...readingsTowardsDry(sheet, facts),
  ];
}

/** Foam, or a gravity that came down, ends the question. "No" asks it again half a day later. */
function lookForLife(facts: Facts): Act[] {
  const looks = facts.judgements.filter(({ what }) => what === 'foam');
  const nth = looks.length + 1;
  const last = looks.findLast(({ at }) => at >= (facts.pitched?.at ?? 0));
  const due = last
    ? hoursAfter(last.at, LOOK_AGAIN_AFTER_HOURS)
    : hoursAfter(facts.pitched?.at ?? facts.now.at, LOOK_AFTER_HOURS);
  return aliveSince(facts) !== undefined
    ? []
    : [{ ...base(facts, 'look for life', nth), kind: 'judge', what: 'foam', due, done: false }];
}

const ALIVE_BY = 30;
/** No sheet's must starts below 1.020: what reads 1.010 has fermented. */
const BELOW_ANY_MUST = 10_100;

/**
 * When it was first seen to be fermenting: foam, or gravity down by 0.003. Bubbles in the airlock are no evidence and are
 * never asked.
 */
export function aliveSince(facts: Facts): Instant | undefined {
  const { joined } = facts;
  if (joined && comesAfter(joined.reached, 'ferment')) return joined.at;
  const start = standing(facts.readings).at(0)?.gravity ?? 0;
  const foam = facts.judgements.find(({ what, yes }) => what === 'foam' && yes)?.at;
  const fallen = standing(readingsOfFerment(facts)).find(
    ({ gravity }) => start - gravity >= ALIVE_BY || gravity < BELOW_ANY_MUST,
  );
  return foam ?? fallen?.takenAt;
}

function readOnTheWay(sheet: KitSheet, facts: Facts): Act[] {
  const { pitched } = facts;
  if (!pitched || FIRST_READING_DAY >= sheet.dry.minimumDays - 2) return [];
  const due = onDay(pitched, FIRST_READING_DAY, facts.freeHour);
  const done = readingsOfFerment(facts).some(
    (reading) => (dayOf(facts, momentOf(reading)) ?? 0) >= FIRST_READING_DAY,
  );
  return [{ ...base(facts, 'read on the way'), kind: 'reading', due, done }];
}

/** The water that mixing day held back for foam goes in once the foam is down. */
function heldBackWater({ batchLitres }: KitSheet, facts: Facts): Act[] {
  const litres = heldBack(facts.brim, batchLitres as Litres);
  return litres > 0 ? [toDoWith(facts, 'add held-back water', litres)] : [];
}

/** Read day by day until the sheet's gravity is reached, then leave the thick lees behind. */
function moveEarly(sheet: KitSheet, facts: Facts): Act[] {
  if (earlyMoveAt(sheet) === undefined) return [];
  const taken = standing(readingsOfFerment(facts));
  const newest = taken.at(-1);
  const ready = newest !== undefined && judge('low enough to move', sheet, facts).open;
  const moved = 'siphon off 1' in facts.done;
  const due = newest ? onDay(momentOf(newest), 1, facts.freeHour) : facts.now.at;
  return [
    {
      ...base(facts, 'read for the move', taken.length + 1),
      kind: 'reading',
      due,
      done: ready || moved,
    },
    ...movingActs(facts, 1).map((act): Act =>
      act.step === 'siphon off' ? { ...act, check: 'low enough to move' } : act,
    ),
    toDo(facts, 'close with airlock', 2),
  ];
}
