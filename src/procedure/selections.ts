import { daysBetween, type Moment } from '../domain/calendar';
import { heldBack } from '../domain/gates/box-complete';
import type { Gravity } from '../domain/gravity';
import { standing, type Reading } from '../domain/reading';
import type { Litres } from '../domain/unit';
import { timesReturned, toldOf, type Addition, type Facts } from './facts';
import type { KitSheet } from './kit-sheet';
import type { Place } from './phase';

/** Readings of the must, before the yeast. */
export const readingsOfMust = (facts: Facts): Reading[] =>
  facts.readings.filter(({ takenAt }) => takenAt < fermentingSince(facts));

/** From when on readings speak of fermentation: the yeast; where that went in before the must was mixed, the gate after it. */
function fermentingSince({ pitched, additions, passed }: Facts): number {
  const early = additions.some(({ contents, phase }) => contents.includes('yeast') && MIXING.has(phase));
  return (early ? passed['proving mixed']?.at : pitched?.at) ?? Infinity;
}

const MIXING: ReadonlySet<Place> = new Set<Place>(['mix', 'proving mixed']);

/**
 * Readings that speak of fermentation: after the yeast, and not of wine that was sweetened since. If the last gate sent
 * the wine back to ferment, only what was read after that.
 */
export function readingsOfFerment(facts: Facts): Reading[] {
  const { readings, pitched } = facts;
  if (!pitched) return [];
  const sugar = sugarToFerment(facts)?.at ?? 0;
  const back = facts.returns.findLast(
    ({ gate, clause }) => gate === 'proving still' && clause === 'still-moving',
  );
  const sweetened = facts.additions.find(
    ({ contents, unguarded }) => contents.includes('sweetening pack') && !unguarded,
  );
  const from = Math.max(back ? back.at : fermentingSince(facts), sugar);
  const until = back || !sweetened ? Infinity : sweetened.at;
  return readings.filter(({ takenAt }) => takenAt >= from && takenAt <= until);
}

/**
 * Readings on which dryness is judged. Wine that was sweetened before the guide was told of it cannot be read dry again:
 * there what was read before the pack, and told since, stands for the live reading.
 */
export function readingsOfDryness(facts: Facts): Reading[] {
  const { joined, additions } = facts;
  const sweetened = additions.some(
    ({ contents, unguarded, at }) =>
      contents.includes('sweetening pack') && !unguarded && joined && at <= joined.at,
  );
  const taken = readingsOfFerment(facts);
  return sweetened ? taken.map((reading) => ({ ...reading, backDated: false })) : taken;
}

/** The last sugar that went in without a guard: the wine is dry only when that has fermented too. */
export const sugarToFerment = ({ additions }: Facts): Addition | undefined =>
  additions.findLast(({ unguarded }) => unguarded);

/** The gravity that the whole batch began from: the must's last reading, thinned by water that was held back and is in now. */
export function startGravity(sheet: KitSheet, facts: Facts): Gravity | undefined {
  const read = standing(readingsOfMust(facts)).at(-1)?.gravity;
  if (read === undefined || !('add held-back water 1' in facts.done)) return read;
  const held = heldBack(facts.brim, sheet.batchLitres as Litres);
  return Math.round(10_000 + (read - 10_000) * (1 - held / sheet.batchLitres)) as Gravity;
}

/** When the gas was last stirred out: gas tests count from then on. Never, where it was not. */
export function lastDegassed({ done }: Facts): number {
  const stirs = Object.entries(done).filter(([act]) => act.startsWith('stir out gas'));
  return Math.max(0, ...stirs.map(([, { at }]) => at));
}

/** The local day of the ferment on which something happened: the day of the yeast is day 0. */
export const dayOf = ({ pitched }: Facts, moment: Moment): number | undefined =>
  pitched && daysBetween(pitched, moment);

/** A reading's own moment: when it was taken, on the wall clock of when it was recorded. */
export const momentOf = ({ takenAt, offsetMinutes }: Reading): Moment => ({ at: takenAt, offsetMinutes });

/** How often the wine has begun to clear: once, and once more for every time the last gate sent it back. */
export const lap = (facts: Facts): number => timesReturned(facts, 'proving still') + 1;

/** What a hydrometer cannot see: a sugar test that shows the wine dry, and nothing sweet added since. */
export function provenBySugarTest({ sugarTests, pitched, additions }: Facts): boolean {
  const sweetened = additions.findLast(({ contents }) => contents.includes('sweetening pack'))?.at ?? 0;
  const test = sugarTests.at(-1);
  return (
    test !== undefined &&
    test.at > Math.max(sweetened, pitched?.at ?? Infinity) &&
    test.gramsPerLitre <= DRY_GRAMS_PER_LITRE
  );
}

const DRY_GRAMS_PER_LITRE = 2;

/** What the vessel that the wine stands in holds to its brim, where it was measured. */
export const vesselNow = ({ done, brim, vessel }: Facts): Litres | undefined =>
  'siphon off 1' in done || 'siphon off 2' in done ? vessel : brim;

/** When the sediment was last stirred up: what was seen before that says nothing of how clear the wine is. Never, where it was not. */
export const lastStirredUp = (facts: Facts): number => toldOf(facts, 'sediment stirred up').at(-1)?.at ?? 0;

/** When the wine last came back from its bottles: what was tested before that says nothing of it now. Never, where it did not. */
export const lastPouredBack = (facts: Facts): number => toldOf(facts, 'poured back').at(-1)?.at ?? 0;
