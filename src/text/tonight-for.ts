import type { Problem } from '../domain/problem';
import type { notAsTold } from './en/not-as-told';
import type { firstProblems } from './en/problems-first';
import type { misread } from './en/problems-misread';
import type { outOfPlace } from './en/problems-out-of-place';
import type { unreadable } from './en/problems-unreadable';
import type { Formats } from './formats';
import type { Text } from './text';

/** Problems that no gate or check gives: what was typed, what is out of place, files, and the device. */
type NeverHolds =
  | keyof (typeof firstProblems & typeof misread & typeof outOfPlace & typeof notAsTold & typeof unreadable)
  | 'journal-mismatch';

/** Clauses of the gates and checks: whatever is not listed above holds a maker up, and wants a word for tonight. */
export type HeldCode = Exclude<Problem['code'], NeverHolds>;

/** What to do tonight about a clause that failed; nothing for a problem that is no clause. */
export function tonightFor(text: Text, problem: Problem, formats: Formats): string | undefined {
  const all: Partial<Record<Problem['code'], unknown>> = text.tonight;
  const words = all[problem.code] as ((problem: Problem, formats: Formats) => string) | undefined;
  return words?.(problem, formats);
}
