import type { Problem } from '../domain/problem';
import { judge } from '../procedure/judge';
import type { Act } from '../procedure/step';
import type { BatchEvent, EventOf, EventType } from './batch-event';
import { clockRefusal, timeLeft } from './clock';
import { actOf, type Refusals, type Standing } from './standing';

const CLOCK: readonly EventType[] = ['clock started', 'clock paused', 'clock resumed', 'clock extended'];

const ANSWERS: Record<Act['kind'], readonly EventType[]> = {
  do: ['act done'],
  add: ['act done'],
  stir: ['act done', ...CLOCK],
  timer: ['act done', ...CLOCK],
  wait: ['act done'],
  reading: ['reading taken'],
  temperature: ['temperature taken'],
  litres: ['litres measured'],
  gap: ['gap measured'],
  bottles: ['bottles counted'],
  filled: ['filled counted'],
  account: ['sachets accounted'],
  instrument: ['instrument checked'],
  judge: ['judged'],
};

/** Whether an event is the kind of answer that an act asks for. */
export const answers = (act: Act, event: BatchEvent): boolean =>
  ANSWERS[act.kind].includes(event.type) &&
  (act.kind !== 'judge' || (event.type === 'judged' && event.what === act.what));

export const ACT_REFUSALS: Refusals = {
  'act done': mayBeDone,
  'clock started': ({ facts }, { act }) => clockRefusal(facts.clocks[act], 'start'),
  'clock paused': ({ facts }, { act }) => clockRefusal(facts.clocks[act], 'pause'),
  'clock resumed': ({ facts }, { act }) => clockRefusal(facts.clocks[act], 'resume'),
  'clock extended': ({ facts }, { act }) => clockRefusal(facts.clocks[act], 'extend'),
};

/** An act is done when what it asks for is so: its check is open, its clock has run, its day has come. */
function mayBeDone(then: Standing, event: EventOf<'act done'>): Problem | undefined {
  const act = actOf(then);
  if (!act) return { code: 'not-this-act' };
  const verdict = act.check && judge(act.check, then.sheet, then.facts);
  if (verdict && !verdict.open) return verdict.because;
  if (act.kind === 'wait' && event.at < act.until)
    return { code: 'clock-not-over', seconds: Math.ceil((act.until - event.at) / 1000) };
  return act.kind === 'stir' || act.kind === 'timer' ? clockNotOver(then, act, event) : undefined;
}

/** A stir may be finished early and counts for what it ran; a wait is a wait. */
function clockNotOver({ facts }: Standing, act: Act, { at }: EventOf<'act done'>): Problem | undefined {
  const clock = facts.clocks[act.id];
  if (!clock) return { code: 'clock-not-running' };
  const left = timeLeft(clock, at);
  return act.kind === 'timer' && left > 0 ? { code: 'clock-not-over', seconds: left } : undefined;
}
