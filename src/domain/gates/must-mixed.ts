import type { Gravity } from '../gravity';
import type { Problem } from '../problem';
import { standing, type Reading } from '../reading';
import type { Litres } from '../unit';
import { verdictOn, type Verdict } from '../verdict';

/** The sheet's start gravity, both ends included. */
export type StartRange = { lowest: Gravity; highest: Gravity };

/** What the mixing gate looks at: readings before the yeast, and how long the must was stirred by the timer. */
export type Mixed = {
  readings: readonly Reading[];
  stirredSeconds: number;
  stirSeconds: number;
  range: StartRange;
  batch: Litres;
};

const READINGS_BEFORE_ON = 2;

/**
 * Is the must mixed? Stirred by the timer and its start gravity in the sheet's range. Outside it: stir and read again;
 * still outside after that is recorded, and on, for the dry limit does not move.
 */
export function mustMixed({ readings, stirredSeconds, stirSeconds, range, batch }: Mixed): Verdict {
  const taken = standing(readings);
  const newest = taken.at(-1);
  return verdictOn([
    stirredSeconds < stirSeconds && { code: 'under-stirred', seconds: stirredSeconds, wanted: stirSeconds },
    !newest && { code: 'no-start-reading' },
    newest && taken.length < READINGS_BEFORE_ON && outside(newest.gravity, range, batch),
  ]);
}

function outside(gravity: Gravity, { lowest, highest }: StartRange, batch: Litres): Problem | false {
  const inside = gravity >= lowest && gravity <= highest;
  return (
    !inside && {
      code: 'start-outside',
      gravity,
      lowest,
      highest,
      litresOver: litresOver(gravity, { lowest, highest }, batch),
    }
  );
}

/**
 * Litres of water too many (negative: too few) that would bring the must to the nearer end of the range.
 * What is dissolved stays the same when water is added, so (gravity − 1) × volume does too, nearly.
 */
export function litresOver(gravity: Gravity, { lowest, highest }: StartRange, batch: Litres): Litres {
  const nearest = gravity < lowest ? lowest : Math.min(gravity, highest);
  const excess = (value: number): number => value - 10_000;
  return (batch * (1 - excess(gravity) / excess(nearest))) as Litres;
}
