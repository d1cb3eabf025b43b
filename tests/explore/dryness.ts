import { HOUR } from '../../src/domain/calendar';
import { countedReadings, mayCount } from '../../src/domain/gates/counted-readings';
import type { Finish } from '../../src/domain/gates/finish';
import { standing, type Reading } from '../../src/domain/reading';
import { isIn, type Facts } from '../../src/procedure/facts';
import { judge } from '../../src/procedure/judge';
import type { KitSheet } from '../../src/procedure/kit-sheet';
import { finishOf, inUse, stabilisersOf } from '../../src/procedure/limits';
import type { Place } from '../../src/procedure/phase';
import { readingsOfDryness, readingsOfFerment } from '../../src/procedure/selections';
import type { Known } from './known';
import { wholeDays, daysToEvening } from './hour';
import { evening } from './readings';

/** Every list that striking one of a list's readings leaves, and the list itself. */
const withOneLess = (readings: readonly Reading[]): Reading[][] =>
  readings.map((struck) => readings.filter((each) => each !== struck));

/** The readings that any clause of the dryness gate can still look at, whichever are struck from here on. */
function needed(eligible: readonly Reading[], finish: Finish, left: number): Reading[] {
  const counted = countedReadings(eligible, finish);
  return left === 0
    ? counted
    : [...counted, ...withOneLess(eligible).flatMap((less) => needed(less, finish, left - 1))];
}

/** Further back than any clause looks, with corrections and with readings that were told late. */
const AS_FAR_BACK = 10;

function lookedAt(readings: readonly Reading[], sheet: KitSheet, left: number): Reading[] {
  const finish = finishOf(sheet);
  const eligible = standing(readings).filter((reading) => mayCount(reading, finish));
  return standing([...new Set(needed(eligible.slice(-AS_FAR_BACK), finish, left))]);
}

/** Days. No clause asks for more; of the newest, a reading that is told a day late may come after it. */
const LONGEST_GAP = 2;
const LONGEST_GAP_YET = 3;

/** The readings that count, each with its distance to the next as far as a clause can tell it. */
export function readingsThatCount(known: Known, left: number): unknown {
  const { sheet, facts, place } = known;
  const { limit } = finishOf(sheet);
  const passing = PROVEN.has(place) && left > 0 ? facts.passed['proving dry'] : undefined;
  const told = lookedAt(readingsOfFerment(facts), sheet, left).map((reading, index, all) => [
    reading.gravity > limit ? 'high' : reading.gravity - limit,
    toNext(reading, all[index + 1], known),
    reading.backDated,
    passing && [passing.readings.includes(reading.entry), reading.takenAt > passing.at],
  ]);
  return [told, PROVEN.has(place) && freshness(known, left), inDoubt(place, facts)];
}

const toNext = ({ takenAt }: Reading, next: Reading | undefined, known: Known): number =>
  next
    ? Math.min(wholeDays(takenAt, next.takenAt), LONGEST_GAP)
    : daysToEvening(takenAt, known.facts, LONGEST_GAP_YET);

/** Behind the gate what it was passed on still matters; at the gate it is about to be passed anew. */
const PROVEN: ReadonlySet<Place> = new Set<Place>(['rack', 'stabilise']);

const FRESH_FOR_HOURS = 72;
/** The evenings to come on which it may still be fresh. */
const EVENINGS = [1, 2, 3, 4];

/** How fresh the proof is: since the gate, or since the last sound reading after it; and what went in since. */
function freshness(known: Known, left: number): unknown {
  const { facts, sheet } = known;
  const passing = facts.passed['proving dry'];
  if (!passing) return undefined;
  const isFresh = (since: number, then: number): boolean => then - since <= FRESH_FOR_HOURS * HOUR;
  const freshSince = (since: number): number | 'stale' =>
    isFresh(since, facts.now.at)
      ? EVENINGS.filter((nth) => isFresh(since, evening(facts, nth))).length
      : 'stale';
  const fresh = standing(readingsOfDryness(facts)).filter(
    (reading) => !reading.backDated && reading.takenAt > passing.at && mayCount(reading, finishOf(sheet)),
  );
  const listed = new Set(stabilisersOf(sheet).map(({ id }) => id));
  return [
    fresh.slice(-1 - left).map(({ takenAt }) => freshSince(takenAt)),
    // A sound reading after the gate stands in its place.
    fresh.length > left || freshSince(passing.at),
    facts.additions.some(({ at, sachet }) => at > passing.at && !listed.has(sachet)),
  ];
}

const inDoubt = (place: Place, { passed, struckAt }: Facts): boolean =>
  PROVEN.has(place) && passed['proving dry']?.readings.some((entry) => entry in struckAt) === true;

const answered = new WeakMap<readonly Reading[], Map<string, unknown>>();

/** Where the wine rests on a baseline: until then a doubt is answered by the week's rest that is still to come. */
export const AT_REST: ReadonlySet<Place> = new Set<Place>([
  'clear',
  'proving clear',
  'proving still',
  'bottle',
]);

/**
 * Beyond the stabilisers no reading of the ferment is taken any more. What the old ones still say is whether the wine is
 * dry, whether that is in doubt, and what either would be if one more of them were struck.
 */
export function dryness({ facts, sheet, place }: Known, left: number): unknown {
  const rests = AT_REST.has(place);
  const passedAt = facts.passed['proving dry']?.at;
  const { baseline, additions, sugarTests, overrides, leftOut } = facts;
  const asked = JSON.stringify([left, rests, passedAt, baseline, additions, sugarTests, overrides, leftOut]);
  const answers = answered.get(facts.readings) ?? new Map<string, unknown>();
  answered.set(facts.readings, answers);
  if (!answers.has(asked)) answers.set(asked, outcomes(sheet, facts, rests, left));
  return answers.get(asked);
}

function outcomes(sheet: KitSheet, facts: Facts, rests: boolean, left: number): unknown {
  const here = verdicts(sheet, facts, rests);
  if (left === 0) return here;
  const beyond = standing(readingsOfFerment(facts)).map(({ entry }) =>
    JSON.stringify(outcomes(sheet, struck(facts, entry), rests, left - 1)),
  );
  return [here, [...new Set(beyond)].toSorted()];
}

const struck = (facts: Facts, entry: number): Facts => ({
  ...facts,
  struckAt: { ...facts.struckAt, [entry]: facts.now.at },
  readings: facts.readings.map((reading) =>
    reading.entry === entry ? { ...reading, struck: true } : reading,
  ),
});

function verdicts(sheet: KitSheet, facts: Facts, rests: boolean): unknown {
  const still = judge('proving still', sheet, facts);
  const doubted =
    rests && !still.open && [still.because, ...still.also].some(({ code }) => code === 'dryness-in-doubt');
  return [yetToSweeten(sheet, facts) && judge('may sweeten', sheet, facts).open, doubted];
}

const yetToSweeten = (sheet: KitSheet, facts: Facts): boolean =>
  inUse(sheet, facts.leftOut).sachets.some(
    ({ id, contents }) => contents.includes('sweetening pack') && !isIn(facts, id),
  );

const BEFORE_SUGAR: ReadonlySet<Place> = new Set<Place>(['degas', 'proving gas-free', 'fine']);

/** Where the sweetening pack is still to come, and a reading that is struck sends the wine back to be proven dry once more. */
export const mayBeProvenAgain = ({ sheet, facts, place }: Known, left: number): boolean =>
  BEFORE_SUGAR.has(place) &&
  yetToSweeten(sheet, facts) &&
  (left > 0 || !judge('may sweeten', sheet, facts).open);
