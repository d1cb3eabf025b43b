const USUAL = 22;
const [NUMB, NUMB_WITHIN] = [10, 1];
const [TOO_HOT, TOO_HOT_WITHIN] = [33, 1.5];

/**
 * How fast yeast works, compared with 22 °C: twice as fast ten degrees warmer, numb below 10 °C, spent above
 * 33 °C.
 */
export function yeastRate(celsius: number): number {
  const awake = 1 / (1 + Math.exp((NUMB - celsius) / NUMB_WITHIN));
  const alive = 1 / (1 + Math.exp((celsius - TOO_HOT) / TOO_HOT_WITHIN));
  return 2 ** ((celsius - USUAL) / 10) * awake * alive;
}

/** A day since pitching, and how warm the wine was. */
export type Warmth = { day: number; celsius: number };

/**
 * Days counted as yeast feels them, until each of some days: as many as it would have needed at 22 °C.
 * Between two known warmths their rates are averaged, and before the first it was as warm as then.
 */
export function warmDays(known: readonly Warmth[]): number[] {
  let [warm, before] = [0, known[0] ? { day: 0, celsius: known[0].celsius } : undefined];
  return known.map((now) => {
    if (before) warm += ((now.day - before.day) * (yeastRate(before.celsius) + yeastRate(now.celsius))) / 2;
    before = now;
    return warm;
  });
}
