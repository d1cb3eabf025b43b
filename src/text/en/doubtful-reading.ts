import type { Problem } from '../../domain/problem';
import type { Formats } from '../formats';

type Questioned = 'reading-jumped' | 'reading-went-up';

/** What is asked before a doubtful reading counts. Its problem tells the rest. */
export const doubtfulReading: {
  [Code in Questioned]: (problem: Extract<Problem, { code: Code }>, formats: Formats) => string;
} = {
  'reading-jumped': ({ by }, f) => `That is ${f.gravity(by)} lower than the last. Is it right?`,
  'reading-went-up': ({ by }, f) => `That is ${f.gravity(by)} higher than the last. Is it right?`,
};
