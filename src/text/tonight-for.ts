import type { Problem } from '../domain/problem';
import type { NotAsTold } from './en/not-as-told';
import type { Formats } from './formats';
import type { Text } from './text';

/** Problems that no gate or check gives: what was typed, what is out of place, files, and the device. */
type NeverHolds =
  | 'gravity-misread'
  | 'temperature-misread'
  | 'volume-misread'
  | 'count-misread'
  | 'number-misread'
  | 'time-misread'
  | 'in-the-future'
  | 'before-the-batch'
  | 'sample-out-of-reach'
  | 'water-misread'
  | 'reading-jumped'
  | 'reading-went-up'
  | 'already-done'
  | 'not-this-act'
  | 'clock-not-running'
  | 'clock-already-running'
  | 'clock-not-over'
  | 'nothing-to-correct'
  | 'batch-has-ended'
  | 'no-such-way-back'
  | 'earlier-than-the-last'
  | 'reason-too-short'
  | 'not-by-voice'
  | 'does-not-yield'
  | 'cannot-be-left-out'
  | 'not-safe-to-leave'
  | 'not-the-next-rung'
  | NotAsTold
  | 'not-json'
  | 'not-a-kit-sheet'
  | 'not-a-batch-file'
  | 'newer-format'
  | 'sheet-refused'
  | 'batch-file-damaged'
  | 'report-misread'
  | 'journal-gap'
  | 'header-lost'
  | 'journal-mismatch'
  | 'no-such-batch'
  | 'no-such-place'
  | 'storage-refused'
  | 'storage-full'
  | 'written-elsewhere'
  | 'no-second-copy'
  | 'file-unreadable';

/** Clauses of the gates and checks: whatever is not listed above holds a maker up, and wants a word for tonight. */
export type HeldCode = Exclude<Problem['code'], NeverHolds>;

/** What to do tonight about a clause that failed; nothing for a problem that is no clause. */
export function tonightFor(text: Text, problem: Problem, formats: Formats): string | undefined {
  const all: Partial<Record<Problem['code'], unknown>> = text.tonight;
  const words = all[problem.code] as ((problem: Problem, formats: Formats) => string) | undefined;
  return words?.(problem, formats);
}
