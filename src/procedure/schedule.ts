import { daysBetween, hoursAfter, onDay, type Moment } from '../domain/calendar';
import { standing } from '../domain/reading';
import type { Instant } from '../domain/unit';
import { base } from './act';
import type { Facts } from './facts';
import type { KitSheet } from './kit-sheet';
import { finishOf } from './limits';
import { momentOf, readingsOfFerment, sugarToFerment } from './selections';
import type { Act } from './step';

const HOURS_IN_A_DAY = 24;

/**
 * The readings that the dryness gate needs, worked backwards so that no day is lost: the last on the sheet's day, the
 * first as much earlier as they must lie apart, the others between. What is late moves the rest along.
 */
export function readingsTowardsDry(sheet: KitSheet, facts: Facts): Act[] {
  const { pitched, freeHour } = facts;
  if (!pitched) return [];
  const { readings, hoursApart } = finishOf(sheet);
  const days = Math.ceil(hoursApart / HOURS_IN_A_DAY);
  const lastDay = lastReadingDay(sheet, facts, days);
  const firstDay = Math.max(0, lastDay - days);
  const taken = standing(readingsOfFerment(facts)).filter(
    (reading) => daysBetween(pitched, momentOf(reading)) >= firstDay,
  );
  return Array.from({ length: readings }, (_, index): Act => {
    const planned = onDay(
      pitched,
      lastDay - Math.round((days * (readings - 1 - index)) / (readings - 1)),
      freeHour,
    );
    const apart = index === readings - 1 && taken[0] ? hoursAfter(taken[0].takenAt, hoursApart) : planned;
    const due = Math.max(planned, apart) as Instant;
    return {
      ...base(facts, 'read towards dry', index + 1),
      kind: 'reading',
      due,
      done: taken.length > index,
    };
  });
}

/** The sheet's minimum day; later where the wine came back to ferment, or got sugar that nothing guards. */
function lastReadingDay({ dry }: KitSheet, facts: Facts, days: number): number {
  const back = facts.returns.findLast(({ clause }) => clause === 'still-moving');
  const returned = back && facts.pitched ? daysBetween(facts.pitched, back) + days : 0;
  const sugar = sugarToFerment(facts);
  const sweetened = sugar && facts.pitched ? daysBetween(facts.pitched, sugar) + days : 0;
  return Math.max(dry.minimumDays, returned, sweetened);
}

/** The days that a sheet promises, counted from the yeast: what the maker can plan by before anything is known. */
export type PromisedDays = { stabilise: number; bottle: number };

export const promisedDays = ({ dry, clearingDays }: KitSheet): PromisedDays => ({
  stabilise: dry.minimumDays,
  bottle: dry.minimumDays + Math.max(clearingDays, 7),
});

/** When a promised day comes for a batch: counted from its yeast, or from its beginning while there is none. */
export const dateOf = (facts: Facts, day: number): Instant => onDay(origin(facts), day, facts.freeHour);

const origin = ({ pitched, begun }: Facts): Moment => pitched ?? begun;
