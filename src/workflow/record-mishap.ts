import { hoursAfter, type Moment } from '../domain/calendar';
import type { Litres } from '../domain/unit';
import {
  isIn,
  litresNow,
  timesReturned,
  toldOf,
  type Addition,
  type Facts,
  type LedgerCause,
  type MishapTold,
} from '../procedure/facts';
import { actsOf } from '../procedure/joining';
import type { KitSheet, Sachet } from '../procedure/kit-sheet';
import { isUnguarded, leadsTo, toldSachet } from '../procedure/leads';
import { MISHAPS } from '../procedure/mishap';
import type { Change } from '../procedure/mishaps/mishap-rules';
import type { Gate, Phase } from '../procedure/phase';
import type { EventOf } from './batch-event';

type Told = {
  sheet: KitSheet;
  facts: Facts;
  place: Phase | Gate;
  event: EventOf<'mishap told'>;
  sachet: Sachet | undefined;
  moment: Moment;
};

/** The facts after a mishap: it is remembered, and changes what it changes. Dates, doses and gates follow from the facts. */
export function mishapTold(
  sheet: KitSheet,
  facts: Facts,
  place: Phase | Gate,
  event: EventOf<'mishap told'>,
): Facts {
  const { mishap, litres } = event;
  const { change, lookAgainHours } = MISHAPS[mishap];
  const moment: Moment = { ...facts.now, at: event.takenAt ?? event.at };
  const sachet = toldSachet(sheet, facts, event);
  const told = {
    ...moment,
    ...{ entry: facts.entries, mishap, place },
    ...(sachet ? { sachet: sachet.id } : {}),
    ...(litres === undefined ? {} : { litres }),
    lookAgain: hoursAfter(event.at, lookAgainHours),
  };
  const known: Facts = { ...facts, mishaps: [...facts.mishaps, told] };
  const after = CHANGES[change]({ sheet, facts: known, place, event, sachet, moment });
  return leadsTo(sheet, facts, place, event) ? fromAnewBaseline(after) : after;
}

/** One mishap changed, by its place in the journal. */
export const withMishap = (facts: Facts, entry: number, change: (told: MishapTold) => MishapTold): Facts => ({
  ...facts,
  mishaps: facts.mishaps.map((told) => (told.entry === entry ? change(told) : told)),
});

/** All is well, and it is not looked at any more; or it is, after as long again. */
export function lookedAgain(
  { lookAgain: _, ...told }: MishapTold,
  { at, well }: EventOf<'looked again'>,
): MishapTold {
  return well ? told : { ...told, lookAgain: hoursAfter(at, MISHAPS[told.mishap].lookAgainHours) };
}

const CHANGES: Record<Change, (told: Told) => Facts> = {
  nothing: ({ facts }) => facts,
  'stirred up': ({ facts }) => facts,
  'sachet in': sachetIn,
  'sachet not in': sachetNotIn,
  'sachet left out': ({ facts, sachet, event }) =>
    sachet ? { ...facts, leftOut: { ...facts.leftOut, [sachet.id]: event.mishap } } : facts,
  'litres lost': ({ facts, event }) => inLedger(facts, 'lost', 0 - (event.litres ?? 0)),
  'filled anew': filledAnew,
  'topped up': ({ facts, event }) => inLedger(facts, 'top-up', event.litres ?? 0),
  'pitched again': ({ facts, sachet, place, moment }) =>
    sachet ? { ...withAddition(facts, { sachet, place, moment }), pitched: moment } : facts,
  'moved early': ({ facts, moment }) =>
    withDone(facts, ['measure vessel 1', 'sanitise again 1', 'siphon off 1'], moment),
  'instrument gone': ({ facts }) => without(facts, 'instrument'),
  'glass in wine': ({ facts }) => without(facts, 'instrument'),
  'bottle lost': bottleLost,
  'poured back': ({ sheet, facts }) => {
    const litres = ((facts.filled ?? 0) * sheet.bottle.millilitres) / 1000;
    return without(without(inLedger(facts, 'poured back', litres), 'filled'), 'bottles');
  },
};

type Adding = { sachet: Sachet; place: Phase | Gate; moment: Moment; unguarded?: boolean };

function sachetIn({ sheet, facts, place, event, sachet, moment }: Told): Facts {
  if (!sachet || isIn(facts, sachet.id)) return facts;
  const unguarded = isUnguarded(sheet, facts, place, sachet, event.takenAt);
  const after = withAddition(facts, { sachet, place, moment, unguarded });
  return sachet.contents.includes('yeast') ? { ...after, pitched: facts.pitched ?? moment } : after;
}

function withAddition(facts: Facts, { sachet, place, moment, unguarded = false }: Adding): Facts {
  const addition: Addition = {
    ...moment,
    ...{ entry: facts.entries, sachet: sachet.id, contents: sachet.contents, phase: place },
    ...(unguarded ? { unguarded: true } : {}),
  };
  const after = withDone(facts, actsOf(sachet), moment);
  return { ...after, leftOut: omit(facts.leftOut, [sachet.id]), additions: [...facts.additions, addition] };
}

/** What was taken to be in is in the maker's hand: its acts are open again, and sugar behind a sorbate has lost its guard. */
function sachetNotIn({ facts, sachet }: Told): Facts {
  if (!sachet) return facts;
  const acts = [...actsOf(sachet), ...(sachet.contents.includes('yeast') ? ['close with airlock 1'] : [])];
  const kept = facts.additions.filter((addition) => addition.sachet !== sachet.id);
  const after: Facts = {
    ...facts,
    additions: sachet.contents.includes('sorbate') ? kept.map(unguard) : kept,
    done: omit(facts.done, acts),
    clocks: omit(facts.clocks, acts),
    leftOut: omit(facts.leftOut, [sachet.id]),
  };
  return sachet.contents.includes('yeast') ? without(after, 'pitched') : after;
}

const unguard = (addition: Addition): Addition =>
  addition.contents.includes('sweetening pack') ? { ...addition, unguarded: true } : addition;

/** Before the yeast the must is filled, stirred and read again; after it only the ledger can follow. */
function filledAnew({ facts, event }: Told): Facts {
  const { litres } = event;
  const measured = litres === undefined ? facts : inLedger(facts, 'must', litres - litresNow(facts));
  const wasRead = `read start ${String(timesReturned(facts, 'proving mixed') + 1)}` in facts.done;
  return facts.pitched || !wasRead ? measured : sentBack(measured, 'proving mixed', 'start-outside');
}

/** Before the bottles are counted, the wine of the broken one is gone from the vessel; after that, one bottle is. */
function bottleLost({ sheet, facts, event }: Told): Facts {
  if (facts.filled !== undefined) return { ...facts, filled: Math.max(0, facts.filled - 1) };
  return inLedger(
    facts,
    'lost',
    -Math.min(litresNow(facts), event.litres ?? sheet.bottle.millilitres / 1000),
  );
}

/** What leads back past the baseline changed the wine: what was compared with it has to begin anew. Bottles change nothing. */
const fromAnewBaseline = (facts: Facts): Facts =>
  facts.baseline === undefined ||
  toldOf(facts, 'poured back', 'sediment stirred up').at(-1)?.entry === facts.entries
    ? facts
    : sentBack(without(facts, 'baseline'), 'proving still', 'no-baseline');

const sentBack = (facts: Facts, gate: Gate, clause: Facts['returns'][number]['clause']): Facts => ({
  ...facts,
  returns: [...facts.returns, { ...facts.now, gate, clause }],
});

const inLedger = (facts: Facts, cause: LedgerCause, litres: number): Facts =>
  litres === 0
    ? facts
    : { ...facts, ledger: [...facts.ledger, { entry: facts.entries, cause, litres: litres as Litres }] };

const withDone = (facts: Facts, acts: readonly string[], moment: Moment): Facts => ({
  ...facts,
  done: { ...facts.done, ...Object.fromEntries(acts.map((act) => [act, moment])) },
});

function omit<Value>(from: Readonly<Record<string, Value>>, keys: readonly string[]): Record<string, Value> {
  return Object.fromEntries(Object.entries(from).filter(([key]) => !keys.includes(key)));
}

function without(facts: Facts, key: 'instrument' | 'pitched' | 'baseline' | 'filled' | 'bottles'): Facts {
  const { [key]: _, ...rest } = facts;
  return rest;
}
