import type { Instrument } from '../reading';
import type { Litres } from '../unit';
import { verdictOn, type Verdict } from '../verdict';

/** What is asked before anything is opened. `missing` holds the printed names of sachets that were not found. */
export type Box = {
  missing: readonly string[] | undefined;
  instrument: Instrument | undefined;
  brim: Litres | undefined;
  batch: Litres;
};

/** Below this many times the batch, the first vessel is refused: there is no room even with water held back. */
const REFUSED_BELOW = 1.08;
/** Below this many times the batch, foam may reach the lid: hose, tray, and some of the water held back. */
const TIGHT_BELOW = 1.25;
const HELD_BACK_AT_MOST = 0.1;

/** Is everything there? Every sachet by name, a hydrometer checked in plain water, a vessel with room for foam. */
export const boxComplete = ({ missing, instrument, brim, batch }: Box): Verdict =>
  verdictOn([
    missing === undefined && { code: 'box-not-checked' },
    missing !== undefined && missing.length > 0 && { code: 'sachets-missing', missing },
    !instrument && { code: 'hydrometer-not-checked' },
    brim !== undefined && roomFor(brim, batch) < REFUSED_BELOW && { code: 'vessel-too-small', brim, batch },
  ]);

/** How many times the batch fits, rounded so that 24.84 L of 23 L is exactly 1.08 in floating point too. */
const roomFor = (brim: Litres, batch: Litres): number => Math.round((brim / batch) * 1e6) / 1e6;

/** Whether foam may reach the lid of this vessel, though the batch fits. */
export const isTight = (brim: Litres, batch: Litres): boolean => roomFor(brim, batch) < TIGHT_BELOW;

/** Water to hold back on mixing day so that foam finds room, at most a tenth of the batch. Litres; 0 where there is room. */
export const heldBack = (brim: Litres | undefined, batch: Litres): Litres =>
  (brim === undefined
    ? 0
    : Math.min(HELD_BACK_AT_MOST * batch, Math.max(0, batch - brim / TIGHT_BELOW))) as Litres;
