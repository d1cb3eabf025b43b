import { daysBetween, HOUR, localDay, nextFreeHour } from '../../src/domain/calendar';
import type { Problem } from '../../src/domain/problem';
import { answersSince } from '../../src/domain/judgement';
import { standing } from '../../src/domain/reading';
import type { Facts } from '../../src/procedure/facts';
import { clearingAct } from '../../src/procedure/judge';
import { isPhase, type Place } from '../../src/procedure/phase';
import { plan } from '../../src/procedure/plan';
import type { Act } from '../../src/procedure/step';
import { hasYielded } from '../../src/procedure/yielding';
import { lastDegassed } from '../../src/procedure/selections';
import type { Maker } from '../story/maker';
import { AT_REST, dryness, readingsThatCount } from './dryness';

/** Where a further reading of the ferment can still be taken, so that each one's own number and time matter. */
const DRYNESS_OPEN: ReadonlySet<Place> = new Set<Place>(['ferment', 'proving dry', 'rack', 'stabilise']);

/** Hours since something, as far as any clause can tell: beyond the longest that one asks for they are all the same. */
const age = (facts: Facts, since: number, atMost: number): number =>
  Math.min(Math.floor((facts.now.at - since) / HOUR), atMost);

/**
 * What tells one state from another, for the search: every clause's inputs, with times only as finely as clauses see
 * them. `left` is how many corrections may still come. That it is fine enough is itself tested, by comparing where two
 * states of one key lead.
 */
export function stateKey(maker: Maker, left: number): string {
  const { facts, place } = maker;
  const open = DRYNESS_OPEN.has(place);
  return JSON.stringify([
    place,
    remaining(maker),
    facts.additions.length,
    Object.keys(facts.passed).length,
    facts.returns
      .filter(({ gate }) => gate !== 'proving mixed')
      .map(({ gate, clause }) => `${gate} ${clause}`),
    open ? readingsThatCount(maker, left) : dryness(maker, left),
    facts.pitched && Math.min(daysBetween(facts.pitched, facts.now), maker.sheet.dry.minimumDays),
    answersSince(facts.judgements, 'rush', 0).at(-1)?.yes,
    open || [AT_REST.has(place) && resting(facts, left), gasTests(facts), clearing(maker)],
    choices(facts),
    Object.values(facts.struckAt).some((at) => at === facts.now.at),
    facts.temperatures.at(-1)?.celsius,
    facts.gap?.millimetres,
    facts.brim,
    facts.bottles && Object.values(facts.bottles),
    !facts.pitched && beforeTheYeast(facts, left),
  ]);
}

const beforeTheYeast = ({ missing, stirredSeconds, readings }: Facts, left: number): unknown => [
  missing,
  Math.max(0, ...Object.values(stirredSeconds)),
  standing(readings)
    .slice(-2 - left)
    .map(({ gravity }) => gravity),
];

/** The acts that wait in this phase, without their numbers: the tenth reading on the way is like the ninth. */
const remaining = ({ place, sheet, facts }: Maker): string | undefined =>
  isPhase(place)
    ? plan(place, sheet, facts)
        .filter(({ done }) => !done)
        .map((act) => `${act.step} ${sachetOf(act)}`)
        .join()
    : undefined;

const sachetOf = (act: Act): string =>
  ('sachet' in act ? (act as { sachet?: { id: string } }).sachet?.id : undefined) ?? '';

const WEEK_HOURS = 7 * 24;

/** The baseline and what was read since, as the last gate sees it. */
function resting(facts: Facts, left: number): unknown {
  const baseline = facts.readings.find(({ entry }) => entry === facts.baseline);
  if (!baseline) return undefined;
  const ready = baseline.takenAt + WEEK_HOURS * HOUR;
  const since = standing(facts.readings).filter(({ takenAt }) => takenAt > baseline.takenAt);
  const rested = since.filter(({ takenAt, backDated }) => takenAt >= ready && !backDated).length;
  return [
    age(facts, baseline.takenAt, WEEK_HOURS),
    nextFreeHour(facts.now, facts.freeHour) === facts.now.at,
    baseline.struck,
    Math.min(rested, left + 1),
    since
      .slice(-1 - left)
      .map((reading) => [
        reading.gravity - baseline.gravity,
        reading.takenAt >= ready && !reading.backDated,
        Math.min(24, Math.round((facts.now.at - reading.takenAt) / HOUR)),
      ]),
    answersSince(facts.judgements, 'gas', ready)
      .slice(-2)
      .map(({ yes }) => yes),
  ];
}

/** Since the gas was last stirred out; a ferment that starts again is followed by another stir. */
const gasTests = (facts: Facts): unknown =>
  answersSince(facts.judgements, 'gas', lastDegassed(facts))
    .slice(-2)
    .map(({ yes }) => yes);

/** Beyond its gate nobody asks any more how clear it was: a ferment that starts again clears anew. */
function clearing({ sheet, facts, place }: Maker): unknown {
  const since = facts.done[clearingAct(facts)];
  if (!since || (place !== 'clear' && place !== 'proving clear')) return undefined;
  const looks = answersSince(facts.judgements, 'clear', since.at);
  const days = new Set(looks.slice(looks.findLastIndex(({ yes }) => !yes) + 1).map(localDay)).size;
  const last = looks.at(-1);
  return [
    last?.yes,
    last && localDay(last) === localDay(facts.now),
    Math.min(days, 2),
    Math.min(daysBetween(since, facts.now), sheet.clearingDays),
  ];
}

const choices = (facts: Facts): unknown => [
  facts.overrides
    .filter(({ question, clause }) => hasYielded(question, clause as Problem['code'], facts))
    .map(({ question, clause }) => `${question} ${clause}`),
  Object.keys(facts.leftOut),
  facts.sugarTests.map(({ gramsPerLitre }) => gramsPerLitre <= 2),
];
