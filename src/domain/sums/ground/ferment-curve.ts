/**
 * The course of a ferment in warm days: what share of the sugar a grown yeast would eat in a day at the
 * outset, how long it takes to grow, and how easily it bears the alcohol that it makes.
 */
export type Course = { rate: number; lag: number; ease: number };

/** The share of sugar left at which yeast can only find it half as fast (Michaelis and Menten's constant). */
const SCARCE = 0.05;
/** Growth is spread over this share of the lag. */
const GROWTH_SPREAD = 0.25;
/** Nobody can tell less sugar than this from none. */
const LEAST_LOG = Math.log(1e-12);
const PRECISE = 1e-6;
const MOST_STEPS = 20;

/** ln(1 + eˣ), and its inverse: a ramp with a rounded foot. */
const ramp = (x: number): number => Math.max(x, 0) + Math.log1p(Math.exp(-Math.abs(x)));
const rampInverse = (y: number): number => y + Math.log(-Math.expm1(-y));

/** Days' worth of a grown yeast's work done by then: growth follows a logistic curve. */
function workDone({ lag }: Course, warm: number): number {
  const spread = lag * GROWTH_SPREAD;
  return spread * (ramp((warm - lag) / spread) - ramp(-lag / spread));
}

/**
 * The work that it takes until a share is left: dy/dw = −rate · y/(y + scarce) · (y + ease)/(1 + ease),
 * solved for w.
 */
function workFor({ rate, ease }: Course, share: number): number {
  const scarce = SCARCE / ease;
  const eaten = -scarce * Math.log(share) + (1 - scarce) * Math.log((1 + ease) / (share + ease));
  return (eaten * (1 + ease)) / rate;
}

/**
 * The share of what can ferment that is left: that equation turned round by Newton's method in the share's
 * logarithm.
 */
export function shareLeft(course: Course, warm: number): number {
  const { rate, ease } = course;
  const scarce = SCARCE / ease;
  const work = (workDone(course, warm) * rate) / (1 + ease);
  const nearlyAll = (1 - scarce) * Math.log((1 + ease) / ease);
  let log = Math.min(0, (nearlyAll - work) / scarce);
  for (let step = 0; step < MOST_STEPS; step++) {
    const share = Math.exp(log);
    const short = -scarce * log + (1 - scarce) * Math.log((1 + ease) / (share + ease)) - work;
    const change = short / (scarce + ((1 - scarce) * share) / (share + ease));
    log += change;
    if (Math.abs(change) < PRECISE) break;
  }
  return Math.exp(Math.max(log, LEAST_LOG));
}

/** The warm day on which only that share is left. */
export function whenLeft(course: Course, share: number): number {
  const spread = course.lag * GROWTH_SPREAD;
  const grown = workFor(course, share) / spread + ramp(-course.lag / spread);
  return course.lag + spread * rampInverse(grown);
}
