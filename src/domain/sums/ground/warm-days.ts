const USUAL = 22;
const TENFOLD = 2;
const [NUMB, NUMB_WITHIN] = [10.5, 1];
const [TOO_HOT, TOO_HOT_WITHIN] = [33, 1.5];

/** How fast yeast works, compared with 22 °C: twice as fast ten degrees warmer, numb below 10 °C, spent above 33 °C. */
export function yeastRate(celsius: number): number {
  const awake = 1 / (1 + Math.exp((NUMB - celsius) / NUMB_WITHIN));
  const alive = 1 / (1 + Math.exp((celsius - TOO_HOT) / TOO_HOT_WITHIN));
  return TENFOLD ** ((celsius - USUAL) / 10) * awake * alive;
}

/** A day since pitching, and how warm the wine was. */
export type Warmth = { day: number; celsius: number };

/** Days counted as yeast feels them: as many as it would have needed at 22 °C. */
export type WarmDays = {
  /** Warm days from the first known warmth until a day. */
  until: (day: number) => number;
  /** The day on which that many warm days have passed. */
  dayOf: (warm: number) => number;
};

/** Between two known warmths their rates are averaged; before the first and after the last it stays as it was. */
export function warmDays(known: readonly [Warmth, ...Warmth[]]): WarmDays {
  const stretches = known.slice(1).map((warmth, index) => {
    const before = known[index] ?? known[0];
    return { from: before.day, rate: (yeastRate(before.celsius) + yeastRate(warmth.celsius)) / 2 };
  });
  const last = known.at(-1) ?? known[0];
  const steps = [...stretches, { from: last.day, rate: yeastRate(last.celsius) }];
  const starts = steps.reduce<number[]>(
    (sums, { from, rate }, index) => [
      ...sums,
      (sums[index] ?? 0) + ((steps[index + 1]?.from ?? from) - from) * rate,
    ],
    [0],
  );
  const stepAt = (isBefore: (index: number) => boolean) =>
    Math.max(
      0,
      steps.findLastIndex((_, index) => isBefore(index)),
    );
  return {
    until: (day) => {
      const place = stepAt((index) => (steps[index]?.from ?? 0) <= day);
      const { from, rate } = steps[place] ?? { from: 0, rate: 1 };
      return (starts[place] ?? 0) + (day - from) * rate;
    },
    dayOf: (warm) => {
      const place = stepAt((index) => (starts[index] ?? 0) <= warm);
      const { from, rate } = steps[place] ?? { from: 0, rate: 1 };
      return from + (warm - (starts[place] ?? 0)) / rate;
    },
  };
}
