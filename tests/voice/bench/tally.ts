import type { Understood } from '../../../src/voice/hearing-of';

/** What came of something said: understood, asked about ("Did you say …?"), taken for something else, or not heard. */
export const OUTCOMES = ['right', 'asked', 'wrong', 'asked amiss', 'missed'] as const;
export type Outcome = (typeof OUTCOMES)[number];

/** Several cuts of one recording: what acts first decides; a question only where nothing acts. */
export function outcomeOf(
  understood: readonly Understood[],
  isRight: (said: string | number) => boolean,
): Outcome {
  const sure = understood.find((each) => each && 'sure' in each);
  if (sure && 'sure' in sure) return isRight(sure.sure) ? 'right' : 'wrong';
  const unsure = understood.find((each) => each !== undefined);
  if (unsure && 'unsure' in unsure) return isRight(unsure.unsure) ? 'asked' : 'asked amiss';
  return 'missed';
}

export type Tally = Record<Outcome, number> & { all: number };

export function tally(outcomes: readonly Outcome[]): Tally {
  const count = (outcome: Outcome) => outcomes.filter((each) => each === outcome).length;
  const counts = Object.fromEntries(OUTCOMES.map((outcome) => [outcome, count(outcome)]));
  return { ...(counts as Record<Outcome, number>), all: outcomes.length };
}

export const percent = (part: number, all: number): string =>
  all === 0 ? '–' : `${((100 * part) / all).toFixed(1)} %`;

/** The value below which nine of ten (or so many) lie. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((one, other) => one - other);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
}
