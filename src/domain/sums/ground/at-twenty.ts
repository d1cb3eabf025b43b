import { brixFromGravity } from '../brix-from-gravity';
import { extractPerAlcohol } from './balling';
import { rootBetween } from './root-between';
import { tabarie, type Liquid } from './tabarie';

const DENSEST: Liquid = { alcohol: 0, extract: 0.45 };
const LIGHTEST: Liquid = { alcohol: 0.35, extract: 0 };
const TWELVE_PERCENT = 0.09641;

/**
 * What the liquid is made of where nothing but its density is known. Above water it is must: extract alone. A
 * hair below water it is still judged as water, because a hydrometer is proved in plain water; by 0.996 it is
 * wine of 12 % vol with the extract that fits; extract runs out at 0.984, and below that there is only more
 * alcohol.
 */
const UNKNOWN: readonly Liquid[] = [
  DENSEST,
  { alcohol: 0, extract: 0 },
  { alcohol: 0.007919, extract: 0 },
  { alcohol: TWELVE_PERCENT, extract: 0.0306 },
  { alcohol: TWELVE_PERCENT, extract: 0 },
  LIGHTEST,
];

/** From a known start, extract turns into alcohol in Balling's proportion until none is left. */
function fermentingFrom(start: number): readonly Liquid[] {
  const brix = brixFromGravity(start);
  const must = { alcohol: 0, extract: brix / 100 };
  return [DENSEST, must, { alcohol: must.extract / extractPerAlcohol(brix), extract: 0 }, LIGHTEST];
}

const between = (from: Liquid, to: Liquid, share: number): Liquid => ({
  alcohol: from.alcohol + (to.alcohol - from.alcohol) * share,
  extract: from.extract + (to.extract - from.extract) * share,
});

/**
 * SG 20/20 of the must or wine that has a given density relative to water when both are at some other
 * temperature. A start gravity, where it is known, says how much of the liquid is alcohol.
 */
export function atTwenty(relative: number, celsius: number, start?: number): number {
  const path = start === undefined ? UNKNOWN : fermentingFrom(start);
  const next = path.findIndex((liquid, place) => place > 0 && tabarie(liquid, celsius) <= relative);
  const [from, to] = [path[next - 1], path[next]];
  if (!from || !to) throw new RangeError(`no wine or must is ${relative} times as dense as water`);
  const off = (share: number) => tabarie(between(from, to, share), celsius) - relative;
  return tabarie(between(from, to, rootBetween(off, 0, 1)), 20);
}
