import { HOUR, hoursAfter, type Moment } from '../calendar';
import type { Gravity } from '../gravity';
import type { Judgement } from '../judgement';
import type { Problem } from '../problem';
import { resolutionOf, standing, type Reading } from '../reading';
import type { Instant } from '../unit';
import { verdictOn, type Verdict } from '../verdict';
import { gasGone } from './gas-gone';

/** What the last gate looks at: the baseline after the last addition, the readings since, and the gas tests since. */
export type Resting = {
  baseline: Reading | undefined;
  readings: readonly Reading[];
  judgements: readonly Judgement[];
  now: Moment;
  /** When the proof of dryness fell into doubt; the baseline must be later, so that a week's rest answers it. */
  doubtedSince?: Instant | undefined;
  /** When the wine came back from its bottles; readings and tests from before say nothing of it now. */
  pouredBackAt?: number;
};

const DAYS_APART = 7;

/** Is the wine still? At least a week after the baseline no fall beyond what the scale can show, and no gas. */
export function wineStill({
  baseline,
  readings,
  judgements,
  now,
  doubtedSince,
  pouredBackAt = 0,
}: Resting): Verdict {
  if (!baseline || baseline.struck) return verdictOn([{ code: 'no-baseline' }]);
  const ready = hoursAfter(baseline.takenAt, DAYS_APART * 24);
  const from = Math.max(ready, pouredBackAt);
  const later = standing(readings).filter(({ takenAt, backDated }) => takenAt >= from && !backDated);
  const gas = gasGone(judgements, from);
  return verdictOn(
    [
      doubtedSince !== undefined &&
        baseline.takenAt <= doubtedSince && { code: 'dryness-in-doubt', since: doubtedSince },
      change(
        baseline,
        standing(readings).filter(({ takenAt }) => takenAt > baseline.takenAt),
      ),
      later.length === 0 && {
        code: 'no-reading-since-baseline',
        days: Math.floor((now.at - baseline.takenAt) / (24 * HOUR)),
        wanted: DAYS_APART,
      },
      ...(gas.open ? [] : [gas.because]),
    ],
    Math.max(ready, now.at) as Instant,
  );
}

/** A fall means the wine is working again; a rise is misread, gassy or a wrong temperature, and is read again. */
function change(baseline: Reading, since: readonly Reading[]): Problem | false {
  const newest = since.at(-1);
  if (!newest) return false;
  const resolution = resolutionOf([baseline, newest]);
  const fall = baseline.gravity - newest.gravity;
  return (
    (fall > resolution && { code: 'still-moving', by: fall as Gravity, resolution }) ||
    (-fall > resolution && { code: 'reading-rose', by: -fall as Gravity, resolution })
  );
}
