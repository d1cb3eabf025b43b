import { daysBetween, HOUR, localDay } from '../../src/domain/calendar';
import { asOf, type Facts } from '../../src/procedure/facts';
import { finishOf } from '../../src/procedure/limits';
import { clearingAct, judge } from '../../src/procedure/judge';
import type { Place } from '../../src/procedure/phase';
import { lastDegassed } from '../../src/procedure/selections';
import type { Maker } from '../story/maker';

/** Hours as far as any clause can tell them apart: a day, two, three, a week. */
const span = (hours: number): number => [24, 48, 72, 168].findIndex((edge) => hours < edge);

/** What tells one state from another, for the search: every clause's inputs, with times only as finely as clauses see them. */
export function stateKey(maker: Maker, mayCorrect: boolean): string {
  const facts = asOf(maker.facts, maker.now);
  return JSON.stringify([
    maker.place,
    acting(maker),
    mayCorrect || !BEYOND_DRYNESS.has(maker.place) ? readings(maker, facts) : restingOnly(maker, facts),
    Object.entries(facts.passed).map(([gate, passing]) => [gate, span((facts.now.at - passing.at) / HOUR)]),
    facts.additions.map(({ sachet }) => sachet).join(),
    judgements(facts),
    facts.returns.map(({ gate, clause }) => `${gate} ${clause}`).toSorted(),
    clearing(maker, facts),
  ]);
}

const sachetOf = ({ sachet }: { sachet?: { id: string } }): string => sachet?.id ?? '';

/** The act, its repetitions told apart as far as a sheet's rounds go. */
const acting = ({ act }: Maker): string | undefined =>
  act &&
  `${act.step} ${'sachet' in act ? sachetOf(act) : ''} ${String(act.nth > 100 ? 'k' : Math.min(act.nth, 4))}`;

/** Where no reading of the ferment is taken any more: all that they still say is whether the wine is dry. */
const BEYOND_DRYNESS: ReadonlySet<Place> = new Set<Place>([
  'degas',
  'proving gas-free',
  'fine',
  'top up',
  'clear',
  'proving clear',
  'proving still',
  'bottle',
  'stand',
  'label',
  'wash up',
  'rest',
]);

function restingOnly(maker: Maker, facts: Facts): unknown {
  const baseline = facts.readings.find(({ entry }) => entry === facts.baseline);
  const since = facts.readings.filter(({ takenAt }) => baseline && takenAt >= baseline.takenAt);
  const { open } = judge('may sweeten', maker.sheet, facts);
  return [open, readings(maker, { ...facts, readings: since })];
}

/** Readings are a day and more apart here, so four reach back beyond any window of two days. */
const AS_FAR_BACK = 4;

function readings({ sheet }: Maker, facts: Facts): unknown {
  const { wineAtLeast, minimumDays, limit } = finishOf(sheet);
  const taken = facts.readings.toSorted((a, b) => a.takenAt - b.takenAt).slice(-AS_FAR_BACK);
  const told = taken.map((reading, index) => [
    reading.gravity > limit ? 'high' : reading.gravity,
    span(((taken[index + 1]?.takenAt ?? facts.now.at) - reading.takenAt) / HOUR),
    reading.wine >= wineAtLeast,
    reading.degassed,
    reading.backDated,
    reading.struck,
    reading.entry === facts.baseline,
    facts.pitched !== undefined && reading.takenAt >= facts.pitched.at,
  ]);
  return [told, facts.pitched && daysBetween(facts.pitched, facts.now) >= minimumDays];
}

function judgements(facts: Facts): unknown {
  const last = (what: string, since: number): string =>
    facts.judgements
      .filter((judgement) => judgement.what === what && judgement.at >= since)
      .map(({ yes }) => (yes ? 'y' : 'n'))
      .slice(-2)
      .join('');
  return [last('gas', lastDegassed(facts)), last('rush', 0), last('foam', 0)];
}

function clearing({ sheet }: Maker, facts: Facts): unknown {
  const since = facts.done[clearingAct(facts)];
  if (!since) return undefined;
  const looks = facts.judgements.filter(({ what, at }) => what === 'clear' && at >= since.at);
  const days = new Set(looks.slice(looks.findLastIndex(({ yes }) => !yes) + 1).map(localDay)).size;
  return [
    looks.at(-1)?.yes,
    Math.min(days, 2),
    daysBetween(since, facts.now) >= sheet.clearingDays,
    span((facts.now.at - since.at) / HOUR),
  ];
}
