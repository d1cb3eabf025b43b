import type { Shut } from '../domain/verdict';
import type { Check } from './check';
import type { Facts } from './facts';
import { judge } from './judge';
import type { KitSheet } from './kit-sheet';
import { isGate, isPhase, type Gate, type Place } from './phase';
import { currentAct } from './plan';
import type { Act, StepId } from './step';

/** What asks where the batch stands, and why its answer is no. */
export type HeldUp = { question: Gate | Check; verdict: Shut };

/** Acts that are asked again until a check is open: what they ask for was given, and was not enough. */
const ASKED_UNTIL: Partial<Record<StepId, Check>> = {
  'measure brim': 'box complete',
  'count bottles': 'bottles ready',
  'take must temperature': 'warm enough to pitch',
  'take wine temperature': 'warm enough to fine',
  'top up': 'topped up',
};

/** The gate, the check of the act, or the check that had the act asked again: nothing where the way is free. */
export function heldUpBy(place: Place, sheet: KitSheet, facts: Facts): HeldUp | undefined {
  const question = isGate(place) ? place : checkOf(actAt(place, sheet, facts), facts);
  const verdict = question && judge(question, sheet, facts);
  return verdict?.open === false ? { question: question as Gate | Check, verdict } : undefined;
}

const actAt = (place: Place, sheet: KitSheet, facts: Facts): Act | undefined =>
  isPhase(place) ? currentAct(place, sheet, facts) : undefined;

function checkOf(act: Act | undefined, facts: Facts): Check | undefined {
  if (!act) return undefined;
  const isAskedAgain = act.id in facts.done || act.nth > 1;
  return isAskedAgain ? (ASKED_UNTIL[act.step] ?? act.check) : act.check;
}
