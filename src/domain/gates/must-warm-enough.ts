import type { Celsius } from '../unit';
import { open, shut, type Verdict } from '../verdict';

/** Warmth at which yeast goes in, both ends included. */
export type PitchRange = { lowest: Celsius; highest: Celsius };

const HOUSE: PitchRange = { lowest: 18 as Celsius, highest: 28 as Celsius };

/** The stricter of house and sheet at each end. */
export const stricterPitch = (sheet: PitchRange): PitchRange => ({
  lowest: Math.max(sheet.lowest, HOUSE.lowest) as Celsius,
  highest: Math.min(sheet.highest, HOUSE.highest) as Celsius,
});

/** May the yeast go in? Only into must within the range: cold it sulks, hot it dies. */
export function mustWarmEnough(must: Celsius | undefined, { lowest, highest }: PitchRange): Verdict {
  if (must === undefined) return shut({ code: 'must-not-measured' });
  if (must < lowest) return shut({ code: 'must-too-cold', must, lowest, highest });
  return must > highest ? shut({ code: 'must-too-warm', must, lowest, highest }) : open;
}
