/** A scale of pressure from nothing to the right: `x` in the drawing's units, for bar over atmosphere. */
export type BarScale = { most: number; ticks: readonly number[]; x: (bar: number) => number };

const STEPS = [0.5, 1, 2, 5] as const;
const TICKS_WANTED = 6;

/** Long enough for the highest pressure told, with few enough ticks to be read. */
export function barScale(highest: number, left: number, right: number): BarScale {
  const step = STEPS.find((each) => highest / each <= TICKS_WANTED) ?? STEPS[3];
  const most = Math.max(1, Math.ceil(highest / step)) * step;
  return {
    most,
    ticks: Array.from({ length: Math.round(most / step) + 1 }, (_, n) => n * step),
    x: (bar) => left + (Math.min(Math.max(0, bar), most) / most) * (right - left),
  };
}
