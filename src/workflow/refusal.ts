import type { Problem } from '../domain/problem';
import { asOf, type Facts } from '../procedure/facts';
import { isEnd } from '../procedure/phase';
import { ACT_REFUSALS, answers } from './act-refusals';
import type { BatchEvent } from './batch-event';
import { CHOICE_REFUSALS } from './choice-refusals';
import { GATE_REFUSALS } from './gate-refusals';
import { JOIN_REFUSALS } from './join-refusals';
import { MISHAP_REFUSALS } from './mishap-refusals';
import { READING_REFUSALS } from './reading-refusals';
import { actOf, type Refusals, type Standing } from './standing';

const REFUSALS: Refusals = {
  ...ACT_REFUSALS,
  ...READING_REFUSALS,
  ...GATE_REFUSALS,
  ...CHOICE_REFUSALS,
  ...MISHAP_REFUSALS,
  ...JOIN_REFUSALS,
};

/** Why a batch does not take an event where it stands; nothing when it does. Guards, screens and voice all ask this. */
export function refusal(standing: Standing, event: BatchEvent): Problem | undefined {
  const known = asked.get(event);
  if (known?.facts === standing.facts && known.place === standing.place && known.sheet === standing.sheet)
    return known.problem;
  const problem = found(standing, event);
  asked.set(event, { ...standing, problem });
  return problem;
}

/** The machine asks its guards whether it can, and asks them again when it does: the last answer is kept. */
const asked = new WeakMap<BatchEvent, Standing & { problem: Problem | undefined }>();

function found({ sheet, facts, place }: Standing, event: BatchEvent): Problem | undefined {
  if (isEnd(place)) return { code: 'batch-has-ended' };
  const then: Standing = { sheet, place, facts: asOf(facts, event) };
  return outOfTime(facts, event) ?? wrongAct(then, event) ?? REFUSALS[event.type]?.(then, event as never);
}

function outOfTime(facts: Facts, { at, takenAt = at }: BatchEvent): Problem | undefined {
  if (at < facts.now.at) return { code: 'earlier-than-the-last' };
  if (takenAt > at) return { code: 'in-the-future', takenAt };
  return takenAt < facts.begun.at ? { code: 'before-the-batch', takenAt, begun: facts.begun.at } : undefined;
}

/** An event that answers an act answers the current one, and in the act's own way. */
function wrongAct(then: Standing, event: BatchEvent): Problem | undefined {
  const named = 'act' in event ? event.act : undefined;
  if (named === undefined) return undefined;
  const current = actOf(then);
  if (current?.id === named) return answers(current, event) ? undefined : { code: 'not-this-act' };
  return { code: named in then.facts.done ? 'already-done' : 'not-this-act' };
}
