import type { Moment } from '../domain/calendar';
import { asGravity, relativeDensity } from '../domain/gravity';
import type { Instrument, Reading } from '../domain/reading';
import { correctHydrometer } from '../domain/sums/correct-hydrometer';
import type { Gravity } from '../domain/gravity';
import type { Litres } from '../domain/unit';
import { litresNow, type Clock, type Facts, type LedgerCause } from '../procedure/facts';
import type { KitSheet } from '../procedure/kit-sheet';
import { isPhase, type Phase, type Place } from '../procedure/phase';
import { currentAct } from '../procedure/plan';
import type { Act } from '../procedure/step';
import type { BatchEvent, EventOf, EventType } from './batch-event';
import { extended, paused, resumed, secondsRun, started } from './clock';

/** What a sample takes from the batch when it does not go back. Litres; a jar of the usual size. */
const SAMPLE_LITRES = 0.15;

/** The facts after one more event. The event was accepted; nothing here refuses or judges. */
export function record(sheet: KitSheet, facts: Facts, place: Place, event: BatchEvent): Facts {
  const now: Moment = { at: event.at, offsetMinutes: event.offsetMinutes };
  const dated: Facts = { ...facts, now, entries: facts.entries + 1 };
  const act = isPhase(place) ? currentAct(place, sheet, dated) : undefined;
  const fold = FOLDS[event.type] as Fold<EventType> | undefined;
  return fold ? fold({ facts: dated, act, phase: place as Phase }, event) : dated;
}

type Open = { facts: Facts; act: Act | undefined; phase: Phase };
type Fold<Type extends EventType> = (open: Open, event: EventOf<Type>) => Facts;

const FOLDS: { [Type in EventType]?: Fold<Type> } = {
  'act done': actDone,
  'sachets accounted': ({ facts }, { act, missing }) => {
    const known = { ...facts, missing: { ...facts.missing, [act]: missing } };
    return missing.length === 0 ? done(known, act) : known;
  },
  'instrument checked': ({ facts }, event) =>
    done({ ...facts, instrument: instrumentFrom(event) }, event.act),
  'litres measured': litresMeasured,
  'bottles counted': ({ facts }, { act, bottles, closures, threaded }) =>
    done({ ...facts, bottles: { bottles, closures, threaded } }, act),
  'filled counted': ({ facts }, { act, filled }) => done({ ...facts, filled }, act),
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
  return act?.step === 'return reserve' ? inLedger(after, 'reserve returned', act.litres ?? 0) : after;
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
  if (of === 'top-up') return event.litres > 0 ? inLedger(after, 'top-up', event.litres) : after;
  return inLedger(after, of === 'must' ? 'must' : 'lees', event.litres - litresNow(facts));
}

/** Plain water read through the same correction: what it shows above or below 1.0000 is the instrument's own error. */
function instrumentFrom(event: EventOf<'instrument checked'>): Instrument {
  const { division, calibratedAt, waterReading, waterCelsius } = event;
  const reading = relativeDensity(waterReading);
  const water = correctHydrometer({ reading, celsius: waterCelsius, calibratedAt });
  return { division, calibratedAt, offset: (asGravity(water) - 10_000) as Gravity };
}

function readingTaken({ facts }: Open, event: EventOf<'reading taken'>): Facts {
  const { instrument } = facts;
  if (!instrument) return facts;
  const reading: Reading = {
    ...facts.now,
    entry: facts.entries,
    takenAt: event.takenAt ?? event.at,
    read: event.reading,
    gravity: corrected(event, instrument),
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

/** What the glass showed, brought to 20/20 °C for this instrument and rounded once. */
export function corrected(
  event: Pick<EventOf<'reading taken'>, 'reading' | 'sampleCelsius'>,
  { calibratedAt, offset }: Instrument,
): Gravity {
  const reading = relativeDensity((event.reading - offset) as Gravity);
  return asGravity(correctHydrometer({ reading, celsius: event.sampleCelsius, calibratedAt }));
}

function answered(facts: Facts, act: string): Facts {
  const after = done(facts, act);
  return act.startsWith('read baseline') ? { ...after, baseline: facts.entries } : after;
}
