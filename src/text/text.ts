import type { Problem } from '../domain/problem';
import type { en } from './en';
import type { enBench } from './en-bench';
import type { enFirst } from './en-first';
import type { Formats } from './formats';
import type { Sentences } from './sentences';

/** Every word the app can say. English is the first of them; another language is finished when it compiles. */
export type Text = typeof en;

/** What the bench shows and its guide says at any time: all of it is there before the bench is. */
export type BenchText = typeof enBench;

/** What can be said before the other words have been fetched. */
export type FirstText = typeof enFirst;

/** What a step shows (at most twelve words, one verb), says, and why; what can hurt is said before it. */
export type StepWords = { show: string; say: string; why: string; more?: string; caution?: string };

/** The sentence for a problem: what is wrong, in numbers, and what to do next. */
export function tell<Code extends Problem['code']>(
  text: { problems: Sentences<Code> },
  problem: Extract<Problem, { code: Code }>,
  formats: Formats,
): string {
  const sentence = text.problems[problem.code] as (problem: Problem, formats: Formats) => string;
  return sentence(problem, formats);
}
