import type { Problem } from '../domain/problem';
import type { Formats } from '../text/formats';
import type { BenchText } from '../text/text';

/** A refusal that only asks whether a reading is right. */
export type Doubt = Extract<Problem, { code: 'reading-jumped' | 'reading-went-up' }>;

export const isDoubt = (problem: Problem): problem is Doubt =>
  problem.code === 'reading-jumped' || problem.code === 'reading-went-up';

/** What is asked before a doubtful reading counts. */
export const doubtAsked = (doubt: Doubt, { doubtfulReading }: BenchText, formats: Formats): string =>
  doubt.code === 'reading-jumped'
    ? doubtfulReading['reading-jumped'](doubt, formats)
    : doubtfulReading['reading-went-up'](doubt, formats);
