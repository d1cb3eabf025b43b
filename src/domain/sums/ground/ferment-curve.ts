/**
 * The course of a ferment in warm days: how fast it runs, when half is gone, and how long its tail is (1 is the
 * logistic curve, less ends more abruptly, more drags on).
 */
export type Course = { rate: number; middle: number; tail: number };

/** Richards' curve: the share of what can ferment that is left, all of it long before the middle. */
export const shareLeft = ({ rate, middle, tail }: Course, warm: number): number =>
  (1 + tail * Math.exp(rate * (warm - middle))) ** (-1 / tail);

/** The warm day on which only that share is left. */
export const whenLeft = ({ rate, middle, tail }: Course, share: number): number =>
  middle + Math.log((share ** -tail - 1) / tail) / rate;
