/** Drawing units from the underside of the stopper down to the wine, and the window in which they are drawn. */
const PER_MILLIMETRE = 2.4;
const DEEPEST = 190;
const LEAST = 10;

/** How deep a gap below the stopper is drawn: true to its millimetres, up to what the drawing can hold. */
export const depthOf = (millimetres: number): number =>
  Math.min(DEEPEST, Math.max(LEAST, millimetres * PER_MILLIMETRE));
