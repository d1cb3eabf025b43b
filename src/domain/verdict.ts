import type { Problem } from './problem';
import type { Instant } from './unit';

/** May the maker go on? A shut verdict carries its reason, so that refusal, card and voice cannot disagree. */
export type Verdict = { open: true } | Shut;

export type Shut = {
  open: false;
  /** The clause to show first. */
  because: Problem;
  /** Every other clause that fails too. */
  also: readonly Problem[];
  /** When it could pass at the earliest, if everything goes well from here; absent where time alone does not help. */
  earliest?: Instant;
};

export const open: Verdict = { open: true };

/** Shut, with the first of some failed clauses as the reason. */
export function shut(because: Problem, also: readonly Problem[] = [], earliest?: Instant): Shut {
  return { open: false, because, also, ...(earliest === undefined ? {} : { earliest }) };
}

/** Open when no clause failed. The order of the clauses is the order in which they are told. */
export function verdictOn(clauses: readonly (Problem | false | undefined)[], earliest?: Instant): Verdict {
  const [because, ...also] = clauses.filter((clause): clause is Problem => Boolean(clause));
  return because === undefined ? open : shut(because, also, earliest);
}
