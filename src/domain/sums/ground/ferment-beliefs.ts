import { shareLeft, type Course } from './ferment-curve';

/** A gravity seen, in warm days since pitching. */
export type Seen = { warm: number; gravity: number };

/**
 * One way that a ferment may go: its course, the share left when it was first seen, the gravity it comes to
 * rest at, and by how many standard deviations its pace will be off from now on.
 */
export type Belief = { course: Course; outset: number; rest: number; hurry: number };

/** Where a ferment is expected to come to rest, how surely, and how likely it is of that sort. */
export type Rest = { mean: number; spread: number; odds: number };

type Normal = { mean: number; spread: number };
const AXES = ['rate', 'lag', 'ease'] as const;
type About = Record<(typeof AXES)[number], Normal>;

/** Logarithms of rate (per warm day), lag (warm days) and ease, before anything is seen. */
const BEFORE: About = {
  rate: { mean: Math.log(0.3), spread: 0.45 },
  lag: { mean: Math.log(1.2), spread: 0.4 },
  ease: { mean: Math.log(0.6), spread: 0.6 },
};
const CELLS = 7;
const ROUNDS = 4;
const WIDE = 2.4;
/** A curve is never quite right: by this much of a warm day along it, and by this much gravity across it. */
const OFF_ALONG = 0.15;
const OFF_ACROSS = 0.001;
/** So many beliefs, all equally likely, stand for everything that could be. */
const BELIEFS = 300;
/** Five values of a standard normal that stand for a fifth of it each. */
const FIFTHS = [-1.2816, -0.5244, 0, 0.5244, 1.2816];

/**
 * What to believe of a ferment after some gravities, the first of which is where it starts. The first rest is
 * the usual one.
 */
export function fermentBeliefs(
  seen: readonly [Seen, ...Seen[]],
  rests: readonly [Rest, ...Rest[]],
): Belief[] {
  let about = BEFORE;
  for (let round = 1; round < ROUNDS; round++) about = closer(weigh(about, seen, rests), about);
  return evenly(weigh(about, seen, rests)).map(({ course, outset, rest }, index) => ({
    course,
    outset,
    rest: Math.min(rest.mean + rest.spread * fifth(index), seen[0].gravity),
    hurry: fifth(Math.floor(index / FIFTHS.length)),
  }));
}

const fifth = (index: number): number => FIFTHS[index % FIFTHS.length] ?? 0;

type Weighed = { course: Course; outset: number; rest: Normal; weight: number };

function weigh(about: About, seen: readonly [Seen, ...Seen[]], rests: readonly [Rest, ...Rest[]]): Weighed[] {
  const judged = coursesAbout(about).flatMap((course) => judge(course, seen, rests));
  const most = judged.reduce((best, { log }) => Math.max(best, log), Number.NEGATIVE_INFINITY);
  const likely = judged.map(({ log, ...one }) => ({ ...one, weight: Math.exp(log - most) }));
  const total = likely.reduce((sum, { weight }) => sum + weight, 0);
  return likely.map((one) => ({ ...one, weight: one.weight / total }));
}

/** Draws from the likely at even steps of their weight, so that each draw is as likely as any other. */
function evenly(likely: readonly Weighed[]): Weighed[] {
  let [sum, drawn] = [0, 0];
  return likely.flatMap((one) => {
    sum += one.weight;
    const upTo = Math.min(BELIEFS, Math.floor(sum * BELIEFS + 0.5));
    const times = Math.max(0, upTo - drawn);
    drawn += times;
    return Array.from({ length: times }, () => one);
  });
}

/**
 * How well one course explains what was seen. Gravity is linear in the gravity at rest, so that one is worked
 * out exactly (a normal prior times a normal likelihood) rather than tried.
 */
function judge(
  course: Course,
  [first, ...later]: readonly [Seen, ...Seen[]],
  rests: readonly [Rest, ...Rest[]],
) {
  const outset = shareLeft(course, first.warm);
  const fall = first.gravity - rests[0].mean;
  let [surety, pull, fit] = [0, 0, priorOf(course)];
  for (const { warm, gravity } of later) {
    const left = shareLeft(course, warm) / outset;
    const along = (left - shareLeft(course, warm + OFF_ALONG) / outset) * fall;
    const trust = 1 / (OFF_ACROSS ** 2 + along ** 2);
    const beyond = gravity - first.gravity * left;
    surety += (1 - left) ** 2 * trust;
    pull += (1 - left) * beyond * trust;
    fit += (Math.log(trust) - beyond ** 2 * trust) / 2;
  }
  return rests.map(({ mean, spread, odds }) => {
    const precision = surety + spread ** -2;
    const best = (pull + mean * spread ** -2) / precision;
    const log =
      fit +
      Math.log(odds / spread) -
      Math.log(precision) / 2 +
      (best ** 2 * precision - (mean / spread) ** 2) / 2;
    return { course, outset, rest: { mean: best, spread: precision ** -0.5 }, log };
  });
}

const priorOf = (course: Course): number =>
  AXES.reduce(
    (sum, axis) => sum - ((Math.log(course[axis]) - BEFORE[axis].mean) / BEFORE[axis].spread) ** 2 / 2,
    0,
  );

/**
 * Where to look next: around the weight, but no narrower than the distance between two courses that were
 * tried.
 */
function closer(weighed: readonly Weighed[], about: About): About {
  const spreadOf = (axis: (typeof AXES)[number]): Normal => {
    const mean = weighed.reduce((sum, { course, weight }) => sum + weight * Math.log(course[axis]), 0);
    const square = weighed.reduce(
      (sum, { course, weight }) => sum + weight * (Math.log(course[axis]) - mean) ** 2,
      0,
    );
    const apart = (2 * WIDE * about[axis].spread) / (CELLS - 1);
    return { mean, spread: Math.max(Math.sqrt(square), apart / 2) };
  };
  return { rate: spreadOf('rate'), lag: spreadOf('lag'), ease: spreadOf('ease') };
}

function coursesAbout(about: About): Course[] {
  const along = ({ mean, spread }: Normal) =>
    Array.from({ length: CELLS }, (_, index) =>
      Math.exp(mean + WIDE * spread * ((2 * index) / (CELLS - 1) - 1)),
    );
  const [rates, lags, eases] = [along(about.rate), along(about.lag), along(about.ease)];
  return rates.flatMap((rate) => lags.flatMap((lag) => eases.map((ease) => ({ rate, lag, ease }))));
}
