import type { Moment } from '../domain/calendar';
import type { Reading } from '../domain/reading';
import type { Litres } from '../domain/unit';
import { asOf, litresNow, type Clock, type Facts, type LedgerCause } from '../procedure/facts';
import type { KitSheet } from '../procedure/kit-sheet';
import { isPhase, type Phase, type Place } from '../procedure/phase';
import { currentAct } from '../procedure/plan';
import type { Act } from '../procedure/step';
import type { BatchEvent, EventOf, EventType } from './batch-event';
import { corrected, instrumentFrom } from './corrected';
import { extended, paused, resumed, secondsRun, started } from './clock';
import { joined } from './record-joined';
import { lookedAgain, mishapTold, withMishap } from './record-mishap';

/** Why the ledger changes when the wine is measured anew. */
const CAUSES = { must: 'must', wine: 'lees', room: 'drawn off' } as const;

/** What a sample takes from the batch when it does not go back. Litres; a jar of the usual size. */
const SAMPLE_LITRES = 0.15;

/** The facts after one more event. The event was accepted; nothing here refuses or judges. */
export function record(sheet: KitSheet, facts: Facts, place: Place, event: BatchEvent): Facts {
  const now: Moment = { at: event.at, offsetMinutes: event.offsetMinutes };
  const dated: Facts = { ...facts, now, entries: facts.entries + 1 };
  const act = isPhase(place) ? currentAct(place, sheet, asOf(facts, event)) : undefined;
  const fold = FOLDS[event.type] as Fold<EventType> | undefined;
  return fold ? fold({ sheet, facts: dated, act, phase: place as Phase }, event) : dated;
}

type Open = { sheet: KitSheet; facts: Facts; act: Act | undefined; phase: Phase };
type Fold<Type extends EventType> = (open: Open, event: EventOf<Type>) => Facts;

const FOLDS: { [Type in EventType]?: Fold<Type> } = {
  'act done': actDone,
  'sachets accounted': ({ facts }, { act, missing }) => {
    const known = { ...facts, missing: { ...facts.missing, [act]: missing } };
    return missing.length === 0 ? done(known, act) : known;
  },
  'instrument checked': ({ facts }, event) =>
    event.act === undefined
      ? { ...facts, instrument: instrumentFrom(event) }
      : done({ ...facts, instrument: instrumentFrom(event) }, event.act),
  'litres measured': litresMeasured,
  'bottles counted': ({ facts }, { act, bottles, closures, threaded }) =>
    done({ ...facts, bottles: { bottles, closures, threaded } }, act),
  'filled counted': ({ facts, sheet }, { act, filled }) =>
    done(inLedger({ ...facts, filled }, 'bottled', (-filled * sheet.bottle.millilitres) / 1000), act),
  'temperature taken': ({ facts }, { act, celsius }) =>
    done(
      { ...facts, temperatures: [...facts.temperatures, { ...facts.now, entry: facts.entries, celsius }] },
      act,
    ),
  'reading taken': readingTaken,
  judged: ({ facts }, { act, what, yes }) => {
    const known = {
      ...facts,
      judgements: [...facts.judgements, { ...facts.now, entry: facts.entries, what, yes }],
    };
    return act === undefined ? known : done(known, act);
  },
  'clock started': ({ facts, act }, event) =>
    onClock(facts, event.act, () => started(act && 'seconds' in act ? act.seconds : 0, event.at)),
  'clock paused': ({ facts }, { act, at }) => onClock(facts, act, (clock) => paused(clock, at)),
  'clock resumed': ({ facts }, { act, at }) => onClock(facts, act, (clock) => resumed(clock, at)),
  'clock extended': ({ facts }, { act, at, seconds }) =>
    onClock(facts, act, (clock) => extended(clock, seconds, at)),
  'gap measured': ({ facts }, { act, millimetres }) =>
    done({ ...facts, gap: { ...facts.now, millimetres } }, act),
  'sugar tested': ({ facts }, { gramsPerLitre }) => ({
    ...facts,
    sugarTests: [...facts.sugarTests, { ...facts.now, gramsPerLitre }],
  }),
  overridden: ({ facts }, { question, clause, reason }) => ({
    ...facts,
    overrides: [...facts.overrides, { ...facts.now, question, clause, reason }],
  }),
  'left out': ({ facts }, { sachet, reason }) => ({
    ...facts,
    leftOut: { ...facts.leftOut, [sachet]: reason },
  }),
  helped: ({ facts }, { rung }) => ({ ...facts, help: [...facts.help, { ...facts.now, rung }] }),
  'away planned': ({ facts }, { from, until }) => ({ ...facts, away: [...facts.away, { from, until }] }),
  'mishap told': ({ sheet, facts, phase }, event) => mishapTold(sheet, facts, phase, event),
  'mishap struck': ({ facts }, { entry }) => withMishap(facts, entry, (told) => ({ ...told, struck: true })),
  'looked again': ({ facts }, event) => withMishap(facts, event.entry, (told) => lookedAgain(told, event)),
  'wrappers counted': ({ facts }) => ({ ...facts, wrappersCounted: facts.entries }),
  joined: ({ sheet, facts }, event) => joined(sheet, facts, event),
  'gate passed': ({ facts }, { gate, rules, readings }) => ({
    ...facts,
    passed: { ...facts.passed, [gate]: { ...facts.now, rules, readings } },
  }),
  'sent back': ({ facts }, { gate, clause }) => ({
    ...facts,
    returns: [...facts.returns, { ...facts.now, gate, clause: clause as never }],
  }),
  'reading struck': ({ facts }, { entry }) => ({
    ...facts,
    struckAt: { ...facts.struckAt, [entry]: facts.now.at },
    readings: facts.readings.map((reading) =>
      reading.entry === entry ? { ...reading, struck: true } : reading,
    ),
  }),
};

const done = (facts: Facts, act: string): Facts => ({ ...facts, done: { ...facts.done, [act]: facts.now } });

const onClock = (facts: Facts, act: string, change: (clock: Clock) => Clock): Facts => ({
  ...facts,
  clocks: { ...facts.clocks, [act]: change(facts.clocks[act] ?? started(0, facts.now.at)) },
});

const inLedger = (facts: Facts, cause: LedgerCause, litres: number): Facts => ({
  ...facts,
  ledger: [...facts.ledger, { entry: facts.entries, cause, litres: litres as Litres }],
});

function actDone({ facts, act, phase }: Open, event: EventOf<'act done'>): Facts {
  const after = done(facts, event.act);
  if (act?.kind === 'stir') return stirred(after, act.id, event);
  if (act?.kind === 'add') return added(after, act, phase);
  if (act?.step === 'draw reserve') return inLedger(after, 'reserve drawn', 0 - (act.litres ?? 0));
  if (act?.step === 'return reserve') return inLedger(after, 'reserve returned', act.litres ?? 0);
  return act?.step === 'add held-back water' ? inLedger(after, 'must', act.litres ?? 0) : after;
}

function stirred(facts: Facts, act: string, { at }: EventOf<'act done'>): Facts {
  const clock = facts.clocks[act];
  const seconds = clock ? secondsRun(clock, at) : 0;
  return { ...facts, stirredSeconds: { ...facts.stirredSeconds, [act]: seconds } };
}

function added(facts: Facts, { sachet }: Extract<Act, { kind: 'add' }>, phase: Phase): Facts {
  const addition = {
    ...facts.now,
    entry: facts.entries,
    sachet: sachet.id,
    contents: sachet.contents,
    phase,
  };
  const after: Facts = { ...facts, additions: [...facts.additions, addition] };
  return sachet.contents.includes('yeast') ? { ...after, pitched: facts.now } : after;
}

function litresMeasured({ facts, act }: Open, event: EventOf<'litres measured'>): Facts {
  const after = done(facts, event.act);
  const of = act?.kind === 'litres' ? act.of : undefined;
  if (of === 'brim') return { ...after, brim: event.litres };
  if (of === 'vessel') return { ...after, vessel: event.litres };
  if (of === 'top-up') return event.litres > 0 ? inLedger(after, 'top-up', event.litres) : after;
  return inLedger(after, CAUSES[of ?? 'wine'], event.litres - litresNow(facts));
}

function readingTaken({ facts }: Open, event: EventOf<'reading taken'>): Facts {
  const { instrument } = facts;
  if (!instrument) return facts;
  const reading: Reading = {
    ...facts.now,
    entry: facts.entries,
    takenAt: event.takenAt ?? event.at,
    read: event.reading,
    gravity: corrected(event, instrument, facts),
    sample: event.sampleCelsius,
    wine: event.wineCelsius,
    degassed: event.degassed,
    division: instrument.division,
    backDated: event.takenAt !== undefined && event.takenAt < event.at,
    struck: false,
  };
  const known: Facts = { ...facts, readings: [...facts.readings, reading] };
  const poured = event.returned ? known : inLedger(known, 'sample', -SAMPLE_LITRES);
  return event.act === undefined ? poured : answered(poured, event.act);
}

function answered(facts: Facts, act: string): Facts {
  const after = done(facts, act);
  return act.startsWith('read baseline') ? { ...after, baseline: facts.entries } : after;
}
