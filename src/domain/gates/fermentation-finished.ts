import { daysBetween, HOUR, hoursAfter, onDay, type Moment } from '../calendar';
import type { Gravity } from '../gravity';
import type { Problem } from '../problem';
import { PERHAPS_FALLING, resolutionOf, standing, type Reading } from '../reading';
import type { Instant } from '../unit';
import { verdictOn, type Verdict } from '../verdict';
import { countedReadings, mayCount } from './counted-readings';
import type { Finish } from './finish';

/** What the dryness gate looks at. `now` is the event's moment, or the display's. */
export type Fermented = {
  readings: readonly Reading[];
  pitched: Moment | undefined;
  now: Moment;
  finish: Finish;
};

const ONE_MORE_AFTER_HOURS = 24;

/**
 * Is fermentation over? Every counted reading at or below the limit, enough of them over long enough, unchanged within
 * what the scale can show, in warm wine, on or after the sheet's day.
 */
export function fermentationFinished(fermented: Fermented): Verdict {
  const counted = countedReadings(fermented.readings, fermented.finish);
  const clauses = [
    ...passedOver(fermented, counted),
    aboveLimit(counted, fermented.finish),
    notLive(counted),
    moved(counted, fermented.finish),
    tooFew(counted, fermented.finish),
    tooSoon(fermented),
  ];
  return verdictOn(clauses, earliestPass(fermented));
}

/** A cold or gassy reading is shown and not counted: when the newest is one, that is the first thing to say. */
function passedOver({ readings, finish }: Fermented, counted: readonly Reading[]): (Problem | false)[] {
  const newest = standing(readings).at(-1);
  if (!newest || mayCount(newest, finish) || enough(counted, finish)) return [];
  const { wine, entry } = newest;
  return [
    wine < finish.wineAtLeast && { code: 'wine-too-cold', wine, atLeast: finish.wineAtLeast, entry },
    !newest.degassed && { code: 'sample-gassy', entry },
  ];
}

function aboveLimit(counted: readonly Reading[], { limit }: Finish): Problem | undefined {
  const high = counted.findLast(({ gravity }) => gravity > limit);
  if (!high) return undefined;
  return high === counted.at(-1)
    ? { code: 'not-dry', gravity: high.gravity, limit }
    : { code: 'was-not-dry', gravity: high.gravity, limit, takenAt: high.takenAt };
}

const notLive = (counted: readonly Reading[]): Problem | false =>
  counted.at(-1)?.backDated === true && { code: 'last-reading-back-dated' };

function tooFew(counted: readonly Reading[], finish: Finish): Problem | false {
  return (
    !enough(counted, finish) && {
      code: 'too-few-readings',
      counted: counted.length,
      wanted: finish.readings,
      hours: hoursCovered(counted),
      hoursWanted: finish.hoursApart,
    }
  );
}

const tooSoon = ({ pitched, now, finish }: Fermented): Problem | false =>
  (!pitched && { code: 'no-yeast-yet' }) ||
  (pitched !== undefined &&
    daysBetween(pitched, now) < finish.minimumDays && {
      code: 'too-soon',
      day: daysBetween(pitched, now),
      minimumDays: finish.minimumDays,
    });

/** Unchanged is a statement about resolution: out of it is moving, well inside it is still, between is "cannot tell yet". */
function moved(counted: readonly Reading[], finish: Finish): Problem | false {
  const resolution = resolutionOf(counted);
  const fall = fallOf(counted);
  if (spreadOf(counted) > resolution) {
    const by = spreadOf(counted) as Gravity;
    return fall < 0 ? { code: 'reading-rose', by, resolution } : { code: 'still-falling', by, resolution };
  }
  const told = fall < PERHAPS_FALLING || !enough(counted, finish) || settledByOneMore(counted, finish);
  return !told && { code: 'cannot-tell-yet', fall: fall as Gravity, resolution };
}

/** The one more reading that "cannot tell yet" asks for: a day later, and not lower than the one before it. */
function settledByOneMore(counted: readonly Reading[], finish: Finish): boolean {
  const before = counted.slice(0, -1);
  const [previous, last] = [before.at(-1), counted.at(-1)];
  return (
    previous !== undefined &&
    last !== undefined &&
    enough(before, finish) &&
    last.takenAt - previous.takenAt >= ONE_MORE_AFTER_HOURS * HOUR &&
    previous.gravity - last.gravity < PERHAPS_FALLING
  );
}

const enough = (counted: readonly Reading[], finish: Finish): boolean =>
  counted.length >= finish.readings && hoursCovered(counted) >= finish.hoursApart;

const hoursCovered = (counted: readonly Reading[]): number =>
  ((counted.at(-1)?.takenAt ?? 0) - (counted[0]?.takenAt ?? 0)) / HOUR;

const fallOf = (counted: readonly Reading[]): number =>
  (counted[0]?.gravity ?? 0) - (counted.at(-1)?.gravity ?? 0);

const spreadOf = (readings: readonly Reading[]): number =>
  readings.length === 0
    ? 0
    : Math.max(...readings.map(({ gravity }) => gravity)) -
      Math.min(...readings.map(({ gravity }) => gravity));

/** The soonest it could open if every reading from now on repeats the newest, or is dry from now on where that one is not. */
function earliestPass({ readings, pitched, now, finish }: Fermented): Instant {
  const run = steadyRun(
    standing(readings).filter((reading) => mayCount(reading, finish)),
    finish,
  );
  const covered = hoursCovered(run) >= finish.hoursApart;
  const longEnough = covered ? now.at : hoursAfter(run[0]?.takenAt ?? now.at, finish.hoursApart);
  const wantsOneMore = covered && fallOf(run) >= PERHAPS_FALLING && !settledByOneMore(run, finish);
  const oneMore = wantsOneMore ? hoursAfter(run.at(-1)?.takenAt ?? now.at, ONE_MORE_AFTER_HOURS) : now.at;
  const day = pitched ? onDay(pitched, finish.minimumDays, 0) : now.at;
  return Math.max(now.at, longEnough, oneMore, day) as Instant;
}

/** The newest readings that are dry and agree with each other. */
function steadyRun(eligible: readonly Reading[], { limit }: Finish): Reading[] {
  const starts = eligible.map((_, index) => eligible.slice(index));
  return (
    starts.find(
      (run) => run.every(({ gravity }) => gravity <= limit) && spreadOf(run) <= resolutionOf(run),
    ) ?? []
  );
}
