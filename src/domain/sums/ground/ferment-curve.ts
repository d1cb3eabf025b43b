/**
 * The course of a ferment in warm days: how fast it runs, when half is gone, and how long its tail is (1 is the
 * logistic curve, less ends more abruptly, more drags on).
 */
export type Course = { rate: number; middle: number; tail: number };

const bare = ({ rate, middle, tail }: Course, warm: number): number =>
  (1 + tail * Math.exp(rate * (warm - middle))) ** (-1 / tail);

/** The share of what can ferment that is left, 1 at the outset: Richards' curve. */
export const shareLeft = (course: Course, warm: number): number => bare(course, warm) / bare(course, 0);

/** The warm day on which only that share is left. */
export function whenLeft(course: Course, share: number): number {
  const { rate, middle, tail } = course;
  const left = share * bare(course, 0);
  return middle + Math.log((left ** -tail - 1) / tail) / rate;
}
