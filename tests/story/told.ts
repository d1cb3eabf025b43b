import { HOUR, type Moment } from '../../src/domain/calendar';
import type { Gravity } from '../../src/domain/gravity';
import type { Judged, Judgement } from '../../src/domain/judgement';
import type { Reading } from '../../src/domain/reading';
import type { Celsius, Instant } from '../../src/domain/unit';
import type { Verdict } from '../../src/domain/verdict';

/** For the gates' tests: stories told in hours since noon of the first day, in UTC. */
const NOON = Date.UTC(2031, 4, 3, 12);

export const momentAt = (hours: number): Moment => ({
  at: (NOON + hours * HOUR) as Instant,
  offsetMinutes: 0,
});

export type Told = Partial<Omit<Reading, 'gravity' | 'wine'>> & {
  gravity: number;
  hours: number;
  wine?: number;
};

/** A reading of warm, degassed wine, but for what is told otherwise. */
export const readingTold = ({ gravity, hours, wine = 21, ...rest }: Told, index: number): Reading => ({
  ...momentAt(hours),
  entry: index + 1,
  takenAt: momentAt(hours).at,
  read: gravity as Gravity,
  gravity: gravity as Gravity,
  sample: 20 as Celsius,
  wine: wine as Celsius,
  degassed: true,
  division: 10,
  backDated: false,
  struck: false,
  ...rest,
});

/** A reading in short: hours, gravity, and what is out of the ordinary. */
export const r = (hours: number, gravity: number, rest: Partial<Told> = {}): Told => ({
  gravity,
  hours,
  ...rest,
});

/** One answer every hour. */
export const answersTold = (what: Judged, answers: readonly boolean[], from = 0): Judgement[] =>
  answers.map((yes, index) => ({ ...momentAt(from + index), entry: index + 1, what, yes }));

/** "open", or the code of every clause that fails, the first to be told first. */
export const codesOf = (verdict: Verdict): string[] | 'open' =>
  verdict.open ? 'open' : [verdict.because, ...verdict.also].map(({ code }) => code);

/** The earliest pass, in the story's hours. */
export const earliestOf = (verdict: Verdict): number | undefined =>
  verdict.open || verdict.earliest === undefined ? undefined : (verdict.earliest - NOON) / HOUR;
