import type { After, Engine, Utterance } from './engine';

/** What became of one utterance. */
export type Outcome = 'ended' | 'failed' | 'never started' | 'never ended';

const NO_START_AFTER = 1500;
const NO_END_AFTER = 2500;
const NO_END_PER_CHARACTER = 120;

/** Speaks one utterance under two watchdogs. `settled` is called once, unless it is called off first. */
export function utter(
  engine: Engine,
  after: After,
  utterance: Utterance,
  settled: (outcome: Outcome) => void,
): () => void {
  let over = false;
  const settle = (outcome: Outcome) => {
    if (over) return;
    callOff();
    settled(outcome);
  };
  let unwatch = after(NO_START_AFTER, () => settle('never started'));
  const callOff = () => {
    over = true;
    unwatch();
  };
  const longest = NO_END_AFTER + NO_END_PER_CHARACTER * utterance.words.length;
  engine.speak(utterance, {
    started: () => {
      if (over) return;
      unwatch();
      unwatch = after(longest, () => settle('never ended'));
    },
    ended: () => settle('ended'),
    failed: () => settle('failed'),
  });
  return callOff;
}
