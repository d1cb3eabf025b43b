const MOST_STEPS = 100;
const CLOSE_ENOUGH = 1e-13;

/**
 * Where a continuous function crosses zero between two points that lie on either side of it. False position
 * in the Illinois form: about eight steps on the smooth curves here, and it never leaves the bracket.
 */
export function rootBetween(f: (x: number) => number, from: number, to: number): number {
  let [a, b] = [from, to];
  let [fa, fb] = [f(a), f(b)];
  if (fa === 0) return a;
  if (!(fa * fb <= 0)) throw new RangeError(`no root between ${from} and ${to}`);
  for (let step = 0; step < MOST_STEPS && fb !== 0 && Math.abs(b - a) > CLOSE_ENOUGH; step++) {
    const x = (a * fb - b * fa) / (fb - fa);
    const fx = f(x);
    if (fx * fb < 0) [a, fa] = [b, fb];
    else fa /= 2;
    if (x === b) break;
    [b, fb] = [x, fx];
  }
  return b;
}
