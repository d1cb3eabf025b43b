import type { Gravity } from '../domain/gravity';
import type { Facts } from './facts';
import type { KitSheet } from './kit-sheet';
import { startRangeOf } from './limits';
import type { StepId } from './step';

/** Ten-thousandths to either side of the sheet's start: a must that was not stirred enough reads far off. */
const AROUND_THE_START = 400;
/** Ten-thousandths above the last reading: more than a sweetening pack adds. */
const ABOVE_THE_LAST = 400;

const LOWEST_START = 10_100;
const LOWEST = 9800 as Gravity;
const HIGHEST = 11_200;

/**
 * What a hydrometer in the wine can plausibly read where it is asked, in ten-thousandths, both ends included. It decides
 * what can be heard, and no more: anything can be typed.
 */
export function gravityAsked(
  step: StepId | undefined,
  sheet: KitSheet,
  { readings }: Pick<Facts, 'readings'>,
): { lowest: Gravity; highest: Gravity } {
  if (step === 'read start') {
    const { lowest, highest } = startRangeOf(sheet);
    return {
      lowest: Math.max(LOWEST_START, lowest - AROUND_THE_START) as Gravity,
      highest: (highest + AROUND_THE_START) as Gravity,
    };
  }
  const last = readings.findLast(({ struck }) => !struck)?.read ?? HIGHEST;
  return { lowest: LOWEST, highest: Math.min(HIGHEST, last + ABOVE_THE_LAST) as Gravity };
}
