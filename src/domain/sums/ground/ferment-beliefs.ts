import { shareLeft, type Course } from './ferment-curve';

/** A gravity seen, in warm days since pitching. */
export type Seen = { warm: number; gravity: number };

/** One way that a ferment may go: its course, the gravity that it comes to rest at, and how likely it is. */
export type Belief = { course: Course; rest: number; weight: number };

/** Where a ferment is expected to come to rest, and how surely: the sound ones, and the stuck. */
type Rest = { mean: number; spread: number; odds: number };

type Axis = { low: number; high: number };
type Box = { rate: Axis; middle: Axis; tail: Axis };

/** Logarithms of rate (per warm day), middle (warm days) and tail: mean and spread before anything is seen. */
const BEFORE = {
  rate: { mean: Math.log(0.9), spread: 0.45 },
  middle: { mean: Math.log(3), spread: 0.45 },
  tail: { mean: Math.log(1.2), spread: 0.5 },
};
const AXES = ['rate', 'middle', 'tail'] as const;
const CELLS = 9;
const ROUNDS = 3;
const WIDE = 2.6;
/** A curve is never quite right: by this much of a warm day along it, and by this much gravity across it. */
const OFF_ALONG = 0.12;
const OFF_ACROSS = 0.0008;
const LEAST_WEIGHT = 1e-4;
/** Five values of a standard normal that stand for a fifth of it each. */
const FIFTHS = [-1.2816, -0.5244, 0, 0.5244, 1.2816];

/** What to believe of a ferment after some gravities, the first of which is where it starts. */
export function fermentBeliefs(seen: readonly [Seen, ...Seen[]], rests: readonly Rest[]): Belief[] {
  let box = boxAround(BEFORE);
  for (let round = 1; round < ROUNDS; round++) box = closerTo(weigh(box, seen, rests), box);
  return weigh(box, seen, rests).flatMap(({ course, weight, mean, spread }) =>
    FIFTHS.map((fifth) => ({ course, rest: mean + spread * fifth, weight: weight / FIFTHS.length })),
  );
}

type Weighed = { course: Course; mean: number; spread: number; weight: number };

function weigh(box: Box, seen: readonly [Seen, ...Seen[]], rests: readonly Rest[]): Weighed[] {
  const logged = cellsOf(box).flatMap((course) => rests.map((rest) => judge(course, rest, seen)));
  const most = logged.reduce((best, { log }) => Math.max(best, log), Number.NEGATIVE_INFINITY);
  const likely = logged
    .map(({ log, ...judged }) => ({ ...judged, weight: Math.exp(log - most) }))
    .filter(({ weight }) => weight > LEAST_WEIGHT);
  const total = likely.reduce((sum, { weight }) => sum + weight, 0);
  return likely.map((judged) => ({ ...judged, weight: judged.weight / total }));
}

/**
 * How well one course explains what was seen. Gravity is linear in the gravity at rest, so that one is worked out
 * exactly (a normal prior times a normal likelihood) rather than tried.
 */
function judge(course: Course, rest: Rest, [first, ...later]: readonly [Seen, ...Seen[]]) {
  const outset = shareLeft(course, first.warm);
  let precision = 1 / rest.spread ** 2;
  let pull = rest.mean * precision;
  let log = Math.log(rest.odds / rest.spread) - (rest.mean * pull) / 2 + priorOf(course);
  for (const { warm, gravity } of later) {
    const left = shareLeft(course, warm) / outset;
    const steep = (left - shareLeft(course, warm + OFF_ALONG) / outset) * (first.gravity - rest.mean);
    const trust = 1 / (OFF_ACROSS ** 2 + steep ** 2);
    const beyond = gravity - first.gravity * left;
    precision += (1 - left) ** 2 * trust;
    pull += (1 - left) * beyond * trust;
    log += (Math.log(trust) - beyond ** 2 * trust) / 2;
  }
  const mean = pull / precision;
  log += (mean * pull - Math.log(precision)) / 2;
  return { course, mean, spread: 1 / Math.sqrt(precision), log };
}

const priorOf = (course: Course): number =>
  AXES.reduce(
    (sum, axis) => sum - ((Math.log(course[axis]) - BEFORE[axis].mean) / BEFORE[axis].spread) ** 2 / 2,
    0,
  );

type About = Record<(typeof AXES)[number], { mean: number; spread: number }>;

const boxAround = (about: About): Box => ({
  rate: around(about.rate),
  middle: around(about.middle),
  tail: around(about.tail),
});

const around = ({ mean, spread }: { mean: number; spread: number }): Axis => ({
  low: mean - WIDE * spread,
  high: mean + WIDE * spread,
});

/** The next box to look into: where the weight lies, but no narrower than two cells of the last one. */
function closerTo(weighed: readonly Weighed[], box: Box): Box {
  const about = (axis: (typeof AXES)[number]) => {
    const mean = weighed.reduce((sum, { course, weight }) => sum + weight * Math.log(course[axis]), 0);
    const square = weighed.reduce(
      (sum, { course, weight }) => sum + weight * (Math.log(course[axis]) - mean) ** 2,
      0,
    );
    const cell = (box[axis].high - box[axis].low) / (CELLS - 1);
    return { mean, spread: Math.max(Math.sqrt(square), cell / 2) };
  };
  return boxAround({ rate: about('rate'), middle: about('middle'), tail: about('tail') });
}

function cellsOf(box: Box): Course[] {
  const along = ({ low, high }: Axis) =>
    Array.from({ length: CELLS }, (_, index) => Math.exp(low + ((high - low) * index) / (CELLS - 1)));
  const [rates, middles, tails] = [along(box.rate), along(box.middle), along(box.tail)];
  return rates.flatMap((rate) => middles.flatMap((middle) => tails.map((tail) => ({ rate, middle, tail }))));
}
