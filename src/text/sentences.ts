import type { Problem } from '../domain/problem';
import type { Formats } from './formats';

/** A sentence for each of these problems. */
export type Sentences<Code extends Problem['code'] = Problem['code']> = {
  [One in Code]: (problem: Extract<Problem, { code: One }>, formats: Formats) => string;
};
