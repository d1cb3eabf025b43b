import type { Shut } from '../domain/verdict';
import { checkOf } from './asked-until';
import type { Check } from './check';
import type { Facts } from './facts';
import { judge } from './judge';
import type { KitSheet } from './kit-sheet';
import { isGate, isPhase, type Gate, type Place } from './phase';
import { currentAct } from './plan';
import type { Act } from './step';

/** What asks where the batch stands, and why its answer is no. */
export type HeldUp = { question: Gate | Check; verdict: Shut };

/** The gate, the check of the act, or the check that had the act asked again: nothing where the way is free. */
export function heldUpBy(place: Place, sheet: KitSheet, facts: Facts): HeldUp | undefined {
  const act = actAt(place, sheet, facts);
  const question = isGate(place) ? place : act && checkOf(act, facts);
  const verdict = question && judge(question, sheet, facts);
  return verdict?.open === false ? { question: question as Gate | Check, verdict } : undefined;
}

const actAt = (place: Place, sheet: KitSheet, facts: Facts): Act | undefined =>
  isPhase(place) ? currentAct(place, sheet, facts) : undefined;
