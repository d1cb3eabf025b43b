import { HOUR } from '../calendar';
import { standing, type Reading } from '../reading';
import type { Finish } from './finish';

/** A reading that may count towards dryness: warm wine, gas shaken out of the sample. */
export const mayCount = (reading: Reading, finish: Finish): boolean =>
  reading.wine >= finish.wineAtLeast && reading.degassed;

/**
 * The readings that are judged: from the newest back to the latest one that is old enough, and further if the sheet
 * asks for more of them. All of them, when none is old enough yet.
 */
export function countedReadings(readings: readonly Reading[], finish: Finish): Reading[] {
  const eligible = standing(readings).filter((reading) => mayCount(reading, finish));
  const newest = eligible.at(-1);
  if (!newest) return [];
  const oldEnough = eligible.findLastIndex(
    ({ takenAt }) => newest.takenAt - takenAt >= finish.hoursApart * HOUR,
  );
  const enough = eligible.length - finish.readings;
  return oldEnough < 0 ? eligible : eligible.slice(Math.max(0, Math.min(oldEnough, enough)));
}
