import { RULES } from '../domain/gates/passing';
import type { Problem } from '../domain/problem';
import type { Check } from '../procedure/check';
import type { Facts } from '../procedure/facts';
import { judge } from '../procedure/judge';
import type { KitSheet } from '../procedure/kit-sheet';
import type { Gate, Place } from '../procedure/phase';
import type { EventOf } from './batch-event';
import { mayYield } from './may-yield';
import { remediesFor } from './remedies';
import { tooShort } from './reason';
import type { Refusals, Standing } from './standing';

export const GATE_REFUSALS: Refusals = {
  judged: mayBeJudged,
  'gate passed': mayPass,
  'sent back': ({ sheet, facts, place }, { gate, clause }) =>
    place === gate &&
    remediesFor(gate, failedAt(gate, sheet, facts)).some((remedy) => remedy.clause === clause)
      ? undefined
      : { code: 'no-such-way-back' },
  overridden: mayBeOverridden,
};

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

/** A clause yields to a typed reason only if it is one that may, only while it fails, and never to a voice. */
function mayBeOverridden(
  { sheet, facts }: Standing,
  { question, clause, reason, how }: EventOf<'overridden'>,
): Problem | undefined {
  if (how === 'voice') return { code: 'not-by-voice' };
  const fails = failedAt(question, sheet, facts).some(({ code }) => code === clause);
  if (!fails || mayYield(question, clause, facts) !== 'to a reason')
    return { code: 'does-not-yield', clause };
  return tooShort(reason);
}

/** Every clause that fails at a gate or check. */
function failedAt(question: Gate | Check, sheet: KitSheet, facts: Facts): readonly Problem[] {
  const verdict = judge(question, sheet, facts);
  return verdict.open ? [] : [verdict.because, ...verdict.also];
}
