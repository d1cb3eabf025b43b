import { HOUR } from '../calendar';
import type { Problem } from '../problem';
import { standing } from '../reading';
import type { Verdict } from '../verdict';
import { open, shut } from '../verdict';
import { mayCount } from './counted-readings';
import { fermentationFinished, type Fermented } from './fermentation-finished';
import type { Passing } from './passing';

/** Something that went into the wine. */
export type AddedSachet = { sachet: string; at: number };

/** What is asked before any stabiliser: the pass itself, what came after it, and the readings as they stand now. */
export type Stabilising = {
  fermented: Fermented;
  passing: Passing | undefined;
  /** Everything added since the gate was passed, but for the stabilisers that the sheet lists. */
  addedSince: readonly AddedSachet[];
  /** Passed under earlier rules, and nothing changed since: those readings were judged then. */
  judgedBefore?: boolean;
};

const FRESH_FOR_HOURS = 72;

/** May a stabiliser go in? Dryness was proven, it still stands, nothing was added since, and it is fresh. */
export function mayStabilise({ fermented, passing, addedSince, judgedBefore }: Stabilising): Verdict {
  if (!passing) return shut({ code: 'dryness-not-proven' });
  const [added] = addedSince;
  if (added) return shut({ code: 'added-since', sachet: added.sachet });
  const finished = judgedBefore ? open : fermentationFinished(fermented);
  if (!finished.open) return finished;
  const stale = staleness(passing, fermented);
  return stale ? shut(stale) : finished;
}

/** The pass is fresh for three days; after that, one fresh reading judged with the old ones will do: one that counts. */
function staleness(passing: Passing, { readings, finish, now }: Fermented): Problem | undefined {
  const fresh = standing(readings).findLast(
    (reading) => !reading.backDated && reading.takenAt > passing.at && mayCount(reading, finish),
  );
  const hours = (now.at - (fresh?.takenAt ?? passing.at)) / HOUR;
  return hours > FRESH_FOR_HOURS ? { code: 'dryness-stale', hours, allowed: FRESH_FOR_HOURS } : undefined;
}
