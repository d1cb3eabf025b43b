import type { Instrument } from '../reading';
import { foamRoom, type FoamRoom } from '../sums/foam-room';
import type { Litres } from '../unit';
import { verdictOn, type Verdict } from '../verdict';

/** What is asked before anything is opened. `missing` holds the printed names of sachets that were not found. */
export type Box = {
  missing: readonly string[] | undefined;
  instrument: Instrument | undefined;
  brim: Litres | undefined;
  batch: Litres;
};

/** Is everything there? Every sachet by name, a hydrometer checked in plain water, a vessel with room for foam. */
export const boxComplete = ({ missing, instrument, brim, batch }: Box): Verdict =>
  verdictOn([
    missing === undefined && { code: 'box-not-checked' },
    missing !== undefined && missing.length > 0 && { code: 'sachets-missing', missing },
    !instrument && { code: 'hydrometer-not-checked' },
    brim !== undefined && isTooSmall(brim, batch) && { code: 'vessel-too-small', brim, batch },
  ]);

/** The least brim that the sum takes: as much too small as any below it. */
const LEAST_BRIM = 0.1;

/** Asked by how many times the batch fits, rounded so that 24.84 L of 23 L is exactly 1.08 in floating point too. */
const roomIn = (brim: Litres, batch: Litres): FoamRoom['code'] =>
  foamRoom({
    brimLitres: Math.max(LEAST_BRIM, Math.round((brim / batch) * 1e6) / 1e6),
    batchLitres: 1,
  }).code;

/** Whether the batch would foam out of this vessel, however much water is held back. */
export const isTooSmall = (brim: Litres, batch: Litres): boolean => roomIn(brim, batch) === 'too-small';

/** Whether foam may reach the lid of this vessel, though the batch fits: hose, tray, and some of the water held back. */
export const isTight = (brim: Litres, batch: Litres): boolean => roomIn(brim, batch) !== 'enough';

/** Water to hold back on mixing day so that foam finds room, at most a tenth of the batch. Litres; 0 where there is room. */
export const heldBack = (brim: Litres | undefined, batch: Litres): Litres =>
  (brim === undefined
    ? 0
    : foamRoom({ brimLitres: Math.max(LEAST_BRIM, brim), batchLitres: batch }).holdBackLitres) as Litres;
