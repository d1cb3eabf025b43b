import type { Hearing, Segment } from './decoder';

const FRAMES_A_SECOND = 100;
/** Silence, noises and joints of the grammar: what the engine hears between words. */
const NOT_A_WORD = /^[<[(+]/;
const WHICH_WAY = /\(\d+\)$/;

/** The engine's answer: its score, frames and words on the first line, then a segment a line (ear.c). */
export type Answer = Hearing & {
  /** Words and silences, each with how well its sounds fit, whatever the grammar weighs. */
  path: readonly Segment[];
};

export function readAnswer(answer: string): Answer | undefined {
  const [first = '', ...rest] = answer.split('\n');
  const [score, frames, words] = first.split('\t');
  if (words === undefined || words === '') return undefined;
  const path = rest.map((line) => segment(line.split('\t')));
  return {
    words,
    score: Number(score),
    seconds: Number(frames) / FRAMES_A_SECOND,
    segments: path.filter(({ word }) => !NOT_A_WORD.test(word)),
    path,
  };
}

function segment([word = '', first, last, acoustic]: readonly string[]): Segment {
  return {
    word: word.replace(WHICH_WAY, ''),
    from: Number(first) / FRAMES_A_SECOND,
    to: (Number(last) + 1) / FRAMES_A_SECOND,
    score: Number(acoustic),
  };
}
