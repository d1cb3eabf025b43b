import type { Phase } from '../procedure/phase';
import type { Sachet } from '../procedure/kit-sheet';
import type { Act, StepId } from '../procedure/step';
import type { Words } from './guide-text';
import { minutesFor } from './minutes-for';
import type { Run } from './run-ahead';
import { isTyped } from './touches';

/** What is said before a run of acts: the stages, how long they take, what must be at hand, and what has to be typed. */
export type Frame = {
  phases: readonly Phase[];
  minutes: number;
  steps: readonly StepId[];
  sachets: readonly Sachet[];
  typed: readonly StepId[];
};

/** Fewer acts than this need no announcing. */
const SHORTEST = 3;
const ROUNDED_TO = 5;

export function frameOf({ phases, acts }: Run): Frame | undefined {
  if (acts.length < SHORTEST) return undefined;
  const minutes = acts.reduce((sum, act) => sum + minutesFor(act), 0);
  return {
    phases,
    minutes: Math.ceil(minutes / ROUNDED_TO) * ROUNDED_TO,
    steps: acts.map(({ step }) => step),
    sachets: acts.flatMap((act: Act) => (act.kind === 'add' ? [act.sachet] : [])),
    typed: acts.filter(isTyped).map(({ step }) => step),
  };
}

/** The frame in words, one fact a line. */
export function frameLines(frame: Frame, { text, formats }: Words, listening: boolean): string[] {
  const { guide, places } = text;
  const things = [...new Set(frame.steps.flatMap((step) => guide.within[step] ?? []))];
  const typed = frame.typed.flatMap((step) => guide.touches[step] ?? []);
  const stages = formats.list(frame.phases.map((phase) => places[phase]));
  return [
    guide.frame.run(stages, formats.duration(frame.minutes * 60)),
    ...(things.length > 0 ? [guide.frame.reach(formats.list(things))] : []),
    ...(frame.sachets.length > 0 ? [guide.frame.sachets(formats.list(frame.sachets.map(guide.sachet)))] : []),
    typed.length > 0
      ? guide.frame[listening ? 'told' : 'touches'](typed.length, formats.list([...new Set(typed)]))
      : guide.frame.noTouches,
  ];
}
