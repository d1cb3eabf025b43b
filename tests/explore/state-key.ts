import { daysBetween } from '../../src/domain/calendar';
import type { Problem } from '../../src/domain/problem';
import { answersSince } from '../../src/domain/judgement';
import { standing } from '../../src/domain/reading';
import type { Facts } from '../../src/procedure/facts';
import type { Phase, Place } from '../../src/procedure/phase';
import { hasYielded } from '../../src/procedure/yielding';
import { lastDegassed } from '../../src/procedure/selections';
import type { Maker } from '../story/maker';
import { clearing } from './clearing';
import { AT_REST, dryness, mayBeProvenAgain, readingsThatCount } from './dryness';
import type { Budget } from './explore';
import { goneWrong } from './gone-wrong';
import { hour } from './hour';
import { remaining } from './remaining';
import { resting } from './resting';

/** Where a further reading of the ferment can still be taken, so that each one's own number and time matter. */
const DRYNESS_OPEN: ReadonlySet<Place> = new Set<Place>(['ferment', 'proving dry', 'rack', 'stabilise']);

/**
 * What tells one state from another, for the search: every clause's inputs, with times only as finely as clauses see
 * them. `left` is what a path may still hold. That it is fine enough is itself tested, by comparing where two states of
 * one key lead.
 */
export function stateKey(maker: Maker, { corrections: left, mishaps }: Budget): string {
  const { facts, place } = maker;
  const open = DRYNESS_OPEN.has(place);
  return JSON.stringify([
    place,
    remaining(maker, place),
    facts.additions.length,
    Object.keys(facts.passed).length,
    facts.returns
      .filter(({ gate }) => gate !== 'proving mixed')
      .map(({ gate, clause }) => `${gate} ${clause}`),
    (open || mayBeProvenAgain(maker, left)) && [readingsThatCount(maker, left), hour(facts)],
    open || dryness(maker, left),
    facts.pitched && Math.min(daysBetween(facts.pitched, facts.now), maker.sheet.dry.minimumDays),
    answersSince(facts.judgements, 'rush', 0).at(-1)?.yes,
    open || [AT_REST.has(place) && resting(facts, left), clearing(maker)],
    gasTests(maker),
    choices(facts),
    Object.values(facts.struckAt).some((at) => at === facts.now.at),
    facts.temperatures.at(-1)?.celsius,
    facts.gap?.millimetres,
    facts.brim,
    facts.bottles && Object.values(facts.bottles),
    !facts.pitched && beforeTheYeast(facts, left),
    goneWrong(maker, left, mishaps),
  ]);
}

const beforeTheYeast = ({ missing, stirredSeconds, readings }: Facts, left: number): unknown => [
  missing,
  Math.max(0, ...Object.values(stirredSeconds)),
  standing(readings)
    .slice(-2 - left)
    .map(({ gravity }) => gravity),
];

/** Since the gas was last stirred out; where another stir is still to come, what was found before says nothing. */
const gasTests = (maker: Maker): unknown =>
  STIRRED.some((phase) => remaining(maker, phase)?.includes('stir out gas')) ||
  answersSince(maker.facts.judgements, 'gas', lastDegassed(maker.facts))
    .slice(-2)
    .map(({ yes }) => yes);

const STIRRED: readonly Phase[] = ['stabilise', 'degas'];

const choices = (facts: Facts): unknown => [
  facts.overrides
    .filter(({ question, clause }) => hasYielded(question, clause as Problem['code'], facts))
    .map(({ question, clause }) => `${question} ${clause}`),
  Object.keys(facts.leftOut),
  facts.sugarTests.map(({ gramsPerLitre }) => gramsPerLitre <= 2),
];
