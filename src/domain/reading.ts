import type { Moment } from './calendar';
import type { Division, Gravity } from './gravity';
import type { Celsius, Instant } from './unit';

/** The maker's hydrometer: its scale, the temperature it is made for, and what it is off by in plain water. */
export type Instrument = {
  division: Division;
  calibratedAt: 20 | 15.56;
  /** What it showed in plain water, corrected, less 1.0000: taken off every reading from then on. */
  offset: Gravity;
};

/** One gravity reading. `read` is what the glass showed; `gravity` is that corrected to 20/20 °C for this instrument. */
export type Reading = Moment & {
  /** Its place in the journal. */
  entry: number;
  takenAt: Instant;
  read: Gravity;
  gravity: Gravity;
  sample: Celsius;
  /** The wine in its vessel, asked apart from the sample. */
  wine: Celsius;
  degassed: boolean;
  division: Division;
  /** Taken before it was recorded: shown and counted, but never the last word. */
  backDated: boolean;
  /** Struck by a correction: still shown, never counted. */
  struck: boolean;
};

/** The smallest difference of two readings that means anything, in ten-thousandths (see `sums/differ.ts`). */
export const resolutionOf = (readings: readonly Reading[]): Gravity =>
  (readings.some(({ division }) => division === 20) ? 19 : 12) as Gravity;

/** A fall this large, or larger, within the resolution is neither "unchanged" nor "falling". */
export const PERHAPS_FALLING = 5 as Gravity;

/** Readings that stand, oldest first by the time they were taken. */
export const standing = (readings: readonly Reading[]): Reading[] =>
  readings.filter(({ struck }) => !struck).toSorted((a, b) => a.takenAt - b.takenAt || a.entry - b.entry);
