import { daysBetween, type Moment } from '../domain/calendar';
import type { Problem, Unsafe } from '../domain/problem';
import type { Instant } from '../domain/unit';
import { isIn, nthBottling, type Facts } from './facts';
import type { KitSheet } from './kit-sheet';
import { stabilisersOf } from './limits';
import type { Gate, Place } from './phase';

/** How long a batch may be left alone where it stands: whole days, why no longer, and the gate that runs again after. */
export type SafePause = { atMostDays: number; why: Unsafe; again?: Gate };

/** Days since the yeast during which somebody must be there to see it start, and not overflow. */
const STARTING_DAYS = 3;
const FERMENTING_DAYS = 14;
const FINISHED_DAYS = 7;
const CLEARING_DAYS = 84;
const SWEETENED_DAYS = 42;

/** The pause that the place allows. Before the yeast, and once the bottles are closed, there is no limit worth a rule. */
export function safePause(sheet: KitSheet, facts: Facts, place: Place): SafePause | undefined {
  if (place === 'pitch') return { atMostDays: 0, why: 'yeast-is-starting' };
  if (place === 'ferment' || place === 'proving dry' || place === 'rack')
    return whileFermenting(facts, place);
  if (place === 'bottle')
    return { atMostDays: bottlesOpen(facts) ? 0 : 7, why: 'bottles-open', again: 'proving still' };
  if (stabilising.has(place) && stabilisersOf(sheet).some(({ id }) => isIn(facts, id)))
    return { atMostDays: 1, why: 'between-stabilising-and-fining', again: 'proving gas-free' };
  if (stabilising.has(place))
    return { atMostDays: FINISHED_DAYS, why: 'finished-unstabilised', again: 'proving dry' };
  return clearing.has(place) ? whileClearing(facts) : undefined;
}

const stabilising: ReadonlySet<Place> = new Set<Place>([
  'stabilise',
  'degas',
  'proving gas-free',
  'fine',
  'top up',
]);
const clearing: ReadonlySet<Place> = new Set<Place>(['clear', 'proving clear', 'proving still']);

function bottlesOpen(facts: Facts): boolean {
  const nth = String(nthBottling(facts));
  return `sanitise bottles ${nth}` in facts.done && !(`count filled ${nth}` in facts.done);
}

function whileFermenting({ pitched, now }: Facts, place: Place): SafePause {
  if (pitched && daysBetween(pitched, now) <= STARTING_DAYS)
    return { atMostDays: 0, why: 'yeast-is-starting' };
  return place === 'ferment'
    ? { atMostDays: FERMENTING_DAYS, why: 'ferment-too-long', again: 'proving dry' }
    : { atMostDays: FINISHED_DAYS, why: 'finished-unstabilised', again: 'proving dry' };
}

function whileClearing({ additions }: Facts): SafePause {
  const sweetened = additions.some(({ contents }) => contents.includes('sweetening pack'));
  return sweetened
    ? { atMostDays: SWEETENED_DAYS, why: 'sweetened-too-long', again: 'proving still' }
    : { atMostDays: CLEARING_DAYS, why: 'clearing-too-long', again: 'proving still' };
}

/** Why a time away is not safe from where the batch stands, and how long would be; nothing when it is. */
export function unsafeToLeave(
  sheet: KitSheet,
  facts: Facts,
  place: Place,
  from: Instant,
  until: Instant,
): Problem | undefined {
  if (until <= from || until <= facts.now.at)
    return { code: 'not-safe-to-leave', why: 'away-ends-before-it-begins', atMostDays: 0 };
  const leaves: Moment = { ...facts.now, at: from };
  const pause = safePause(sheet, { ...facts, now: leaves }, place);
  const days = daysBetween(leaves, { ...leaves, at: until });
  return pause && days > pause.atMostDays
    ? { code: 'not-safe-to-leave', why: pause.why, atMostDays: pause.atMostDays }
    : undefined;
}
