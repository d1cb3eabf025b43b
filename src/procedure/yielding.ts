import type { Problem } from '../domain/problem';
import { shut, type Verdict } from '../domain/verdict';
import type { Check } from './check';
import type { Facts } from './facts';
import type { Gate } from './phase';

/** The clauses that yield to a typed reason: cosmetic and calendar ones. Whatever is not here yields to nothing. */
export const YIELDS = {
  'proving dry': ['too-soon'],
  'proving gas-free': ['gassy', 'gas-not-tested'],
  'proving clear': ['clearing-too-short', 'cloudy', 'not-looked-at'],
  'warm enough to fine': ['fining-too-cold'],
  'topped up': ['gap-too-wide'],
} as const satisfies Partial<Record<Gate | Check, readonly Problem['code'][]>>;

/** Whether a clause is one that yields to a reason where it is asked. */
export const yields = (question: Gate | Check, clause: string): boolean =>
  Object.entries(YIELDS).some(
    ([asked, clauses]) => asked === question && clauses.some((code) => code === clause),
  );

/** Whether a clause has yielded, since the wine last came back from the gate that asks. */
export function hasYielded(question: Gate | Check, clause: Problem['code'], facts: Facts): boolean {
  const since = facts.returns.findLast(({ gate }) => gate === question || gate === 'proving still')?.at ?? 0;
  return facts.overrides.some(
    (override) => override.question === question && override.clause === clause && override.at >= since,
  );
}

/** A verdict without the clauses that have yielded. */
export function yielding(question: Gate | Check, verdict: Verdict, facts: Facts): Verdict {
  if (verdict.open) return verdict;
  const [because, ...also] = [verdict.because, ...verdict.also].filter(
    ({ code }) => !yields(question, code) || !hasYielded(question, code, facts),
  );
  return because === undefined ? { open: true } : shut(because, also, verdict.earliest);
}
