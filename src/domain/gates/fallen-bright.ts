import { daysBetween, localDay, onDay, type Moment } from '../calendar';
import type { Instant } from '../unit';
import { answersSince, type Judgement } from '../judgement';
import { verdictOn, type Verdict } from '../verdict';

/** What the clarity gate looks at. `clearingSince` is when the wine was last fined, moved or topped up. */
export type Clearing = {
  judgements: readonly Judgement[];
  clearingSince: Moment | undefined;
  minimumDays: number;
  now: Moment;
};

const CLEAR_DAYS = 2;

/** Has the wine fallen bright? The sheet's days of clearing, and clear to the eye on two days, the latest look included. */
export function fallenBright({ judgements, clearingSince, minimumDays, now }: Clearing): Verdict {
  const looks = answersSince(judgements, 'clear', clearingSince?.at ?? now.at);
  const day = clearingSince ? daysBetween(clearingSince, now) : 0;
  const sinceCloudy = looks.slice(looks.findLastIndex(({ yes }) => !yes) + 1);
  const days = new Set(sinceCloudy.map(localDay)).size;
  return verdictOn(
    [
      looks.at(-1)?.yes === false && { code: 'cloudy' },
      day < minimumDays && { code: 'clearing-too-short', day, minimumDays },
      days < CLEAR_DAYS && { code: 'not-looked-at', days, wanted: CLEAR_DAYS },
    ],
    clearingSince && earliestClear(clearingSince, minimumDays, now, sinceCloudy.at(-1)),
  );
}

/** On the sheet's day, and on another day than the last look: tomorrow where there was none, for today's would be the first. */
function earliestClear(since: Moment, minimumDays: number, now: Moment, lastLook: Moment = now): Instant {
  return Math.max(now.at, onDay(since, minimumDays, 0), onDay(lastLook, 1, 0)) as Instant;
}
