import { RULES } from '../domain/gates/passing';
import type { Problem } from '../domain/problem';
import { standing } from '../domain/reading';
import { asOf, type Facts } from '../procedure/facts';
import { judge } from '../procedure/judge';
import type { KitSheet } from '../procedure/kit-sheet';
import { isEnd, isGate, isPhase, type Gate, type Place } from '../procedure/phase';
import { currentAct } from '../procedure/plan';
import type { Act } from '../procedure/step';
import type { BatchEvent, EventOf, EventType } from './batch-event';
import { clockRefusal, timeLeft } from './clock';
import { remediesFor } from './remedies';

/** Where the batch stands when an event comes. */
export type Standing = { sheet: KitSheet; facts: Facts; place: Place };

/** Why a batch does not take an event where it stands; nothing when it does. Guards, screens and voice all ask this. */
export function refusal({ sheet, facts, place }: Standing, event: BatchEvent): Problem | undefined {
  if (isEnd(place)) return { code: 'batch-has-ended' };
  const then: Standing = { sheet, place, facts: asOf(facts, event) };
  return outOfTime(facts, event) ?? wrongAct(then, event) ?? RULES_FOR[event.type]?.(then, event as never);
}

function outOfTime(facts: Facts, { at, takenAt = at }: BatchEvent): Problem | undefined {
  if (at < facts.now.at) return { code: 'earlier-than-the-last' };
  if (takenAt > at) return { code: 'in-the-future', takenAt };
  return takenAt < facts.begun.at ? { code: 'before-the-batch', takenAt, begun: facts.begun.at } : undefined;
}

/** An event that answers an act answers the current one, and in the act's own way. */
function wrongAct({ sheet, facts, place }: Standing, event: BatchEvent): Problem | undefined {
  const named = 'act' in event ? event.act : undefined;
  if (named === undefined) return undefined;
  const current = isPhase(place) ? currentAct(place, sheet, facts) : undefined;
  if (current?.id === named) return answers(current, event) ? undefined : { code: 'not-this-act' };
  return { code: named in facts.done ? 'already-done' : 'not-this-act' };
}

const ANSWERS: Record<Act['kind'], readonly EventType[]> = {
  do: ['act done'],
  add: ['act done'],
  stir: ['act done', 'clock started', 'clock paused', 'clock resumed', 'clock extended'],
  timer: ['act done', 'clock started', 'clock paused', 'clock resumed', 'clock extended'],
  wait: ['act done'],
  reading: ['reading taken'],
  temperature: ['temperature taken'],
  litres: ['litres measured'],
  bottles: ['bottles counted'],
  filled: ['filled counted'],
  account: ['sachets accounted'],
  instrument: ['instrument checked'],
  judge: ['judged'],
};

const answers = (act: Act, event: BatchEvent): boolean =>
  ANSWERS[act.kind].includes(event.type) &&
  (act.kind !== 'judge' || (event.type === 'judged' && event.what === act.what));

type Rules = { [Type in EventType]?: (then: Standing, event: EventOf<Type>) => Problem | undefined };

const RULES_FOR: Rules = {
  'act done': mayBeDone,
  'clock started': ({ facts }, { act }) => clockRefusal(facts.clocks[act], 'start'),
  'clock paused': ({ facts }, { act }) => clockRefusal(facts.clocks[act], 'pause'),
  'clock resumed': ({ facts }, { act }) => clockRefusal(facts.clocks[act], 'resume'),
  'clock extended': ({ facts }, { act }) => clockRefusal(facts.clocks[act], 'extend'),
  'reading taken': mayBeRead,
  judged: mayBeJudged,
  'gate passed': mayPass,
  'sent back': ({ sheet, facts, place }, { gate, clause }) =>
    place === gate &&
    remediesFor(gate, failedAt(gate, sheet, facts)).some((remedy) => remedy.clause === clause)
      ? undefined
      : { code: 'no-such-way-back' },
  'reading struck': ({ facts }, { entry }) =>
    standing(facts.readings).some((reading) => reading.entry === entry)
      ? undefined
      : { code: 'nothing-to-correct' },
  ended: (_, { how, reason }) =>
    how === 'voice' || reason.length < SHORTEST_REASON ? { code: 'reason-too-short' } : undefined,
};

const SHORTEST_REASON = 4;

/** An act is done when what it asks for is so: its check is open, its clock has run, its day has come. */
function mayBeDone({ sheet, facts, place }: Standing, event: EventOf<'act done'>): Problem | undefined {
  const act = isPhase(place) ? currentAct(place, sheet, facts) : undefined;
  if (!act) return { code: 'not-this-act' };
  const verdict = act.check && judge(act.check, sheet, facts);
  if (verdict && !verdict.open) return verdict.because;
  if (act.kind === 'wait' && event.at < act.until)
    return { code: 'clock-not-over', seconds: Math.ceil((act.until - event.at) / 1000) };
  if (act.kind !== 'stir' && act.kind !== 'timer') return undefined;
  const clock = facts.clocks[act.id];
  if (!clock) return { code: 'clock-not-running' };
  const left = timeLeft(clock, event.at);
  return act.kind === 'timer' && left > 0 ? { code: 'clock-not-over', seconds: left } : undefined;
}

/** The hydrometer must have been checked, and only must or wine is measured: before mixing there is none. */
function mayBeRead({ facts, place }: Standing, event: EventOf<'reading taken'>): Problem | undefined {
  if (!facts.instrument) return { code: 'hydrometer-not-checked' };
  const mustThere = event.act !== undefined || facts.done['fill to mark 1'] !== undefined;
  return mustThere && !AFTER_BOTTLING.has(place) ? undefined : { code: 'not-this-act' };
}

const AFTER_BOTTLING: ReadonlySet<Place> = new Set<Place>(['stand', 'label', 'wash up', 'rest']);

/** Gas and clarity are judged at their gates without an act; everything else answers one. */
function mayBeJudged({ place }: Standing, { act, what }: EventOf<'judged'>): Problem | undefined {
  const asked: Partial<Record<Place, readonly string[]>> = {
    'proving gas-free': ['gas'],
    'proving clear': ['clear'],
    'proving still': ['gas', 'clear'],
  };
  return act !== undefined || asked[place]?.includes(what) ? undefined : { code: 'not-this-act' };
}

/** A pass under the present rules is judged now; one under earlier rules was judged then and stands. */
function mayPass(
  { sheet, facts, place }: Standing,
  { gate, rules }: EventOf<'gate passed'>,
): Problem | undefined {
  if (gate !== place || rules > RULES) return { code: 'not-this-act' };
  const verdict = judge(gate, sheet, facts);
  return rules < RULES || verdict.open ? undefined : verdict.because;
}

/** Every clause that fails at a gate. */
export function failedAt(gate: Gate, sheet: KitSheet, facts: Facts): readonly Problem[] {
  const verdict = judge(gate, sheet, facts);
  return verdict.open ? [] : [verdict.because, ...verdict.also];
}

/** The place as a gate, where it is one. */
export const gateAt = (place: Place): Gate | undefined => (isGate(place) ? place : undefined);
