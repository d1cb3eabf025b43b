import type { Litres } from '../unit';
import { open, shut, type Verdict } from '../verdict';

/** Powder in gassy wine brings up foam; room for a twentieth of the wine keeps it in the vessel. Common practice. */
const SHARE = 0.05;

/** Litres of free space that a vessel should have before powders go in. */
export const foamRoomWanted = (wine: Litres): Litres => (Math.round(wine * SHARE * 10) / 10) as Litres;

/** Is there room for foam? Asked of the ledger; a vessel whose brim nobody measured is not held up. */
export function roomForFoam(vessel: Litres | undefined, wine: Litres): Verdict {
  if (vessel === undefined) return open;
  const room = Math.max(0, toMillilitres(vessel - wine)) as Litres;
  const wanted = foamRoomWanted(wine);
  return room < wanted ? shut({ code: 'no-room-for-foam', room, wanted }) : open;
}

/** Litres that were taken off and put back differ in floating point; nobody measures finer than a millilitre. */
const toMillilitres = (litres: number): number => Math.round(litres * 1000) / 1000;
