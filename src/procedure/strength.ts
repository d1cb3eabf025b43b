import { relativeDensity } from '../domain/gravity';
import { standing, type Reading } from '../domain/reading';
import { alcoholFromGravity } from '../domain/sums/alcohol-from-gravity';
import { blend } from '../domain/sums/blend';
import type { Interval } from '../domain/sums/ground/interval';
import { sugarLeft } from '../domain/sums/sugar-left';
import { asOneMust } from './as-one-must';
import { litresNow, type Facts } from './facts';
import { forecastFor } from './forecast';
import type { KitSheet } from './kit-sheet';
import { finishOf, inUse } from './limits';
import { readingsOfMust } from './selections';

/** Alcohol in % vol, sugar in g/L, gravities as plain decimals. */
export type Strength = {
  start: number;
  /** The newest reading of wine to which nothing was put, and what has become of its sugar by then. */
  now: number;
  alcohol: Interval & { simpleRule: number };
  sugar: Interval;
  /** Where it is going: by the forecast, or to the limit while there is none. Absent once it has fermented. */
  ahead?: Interval & { by: 'forecast' | 'limit' };
  /** What topping up has come to: as weak as water would have made it. */
  toppedUp?: { litres: number; withWater: number };
};

const [THINNEST, THICKEST, LIGHTEST] = [1, 1.17, 0.98] as const;

/** How strong the wine is, and will be. Nothing without a start gravity, or where a reading is beyond the sums. */
export function strength(sheet: KitSheet, facts: Facts): Strength | undefined {
  const first = standing(readingsOfMust(facts)).at(-1);
  if (!first) return undefined;
  const newest = newestOfWineAlone(facts) ?? first;
  const [start, now] = [first, newest].map((reading) => asOneMust(sheet, facts, reading)) as [number, number];
  if (start < THINNEST || start > THICKEST || now < LIGHTEST || now > THICKEST) return undefined;
  const division = relativeDensity(newest.division as never);
  const alcohol = alcoholFromGravity({ start, finish: now, division });
  const ahead = facts.passed['proving dry'] ? undefined : aheadOf(sheet, facts, start);
  const toppedUp = afterTopUp(facts, now, alcohol.value);
  return {
    start,
    now,
    alcohol,
    sugar: sugarLeft({ start, now, division }),
    ...(ahead && { ahead }),
    ...(toppedUp && { toppedUp }),
  };
}

/** What was read after a pack or a top-up went in tells of more than the ferment. */
function newestOfWineAlone({ readings, pitched, additions, ledger }: Facts): Reading | undefined {
  const sweetened = additions.find(({ contents }) => contents.includes('sweetening pack'));
  const toppedUp = ledger.find(({ cause }) => cause === 'top-up');
  const until = Math.min(sweetened?.entry ?? Infinity, toppedUp?.entry ?? Infinity);
  return standing(readings)
    .filter(({ takenAt, entry }) => pitched && takenAt >= pitched.at && entry < until)
    .at(-1);
}

function aheadOf(sheet: KitSheet, facts: Facts, start: number): Strength['ahead'] {
  const to = (finish: number): Interval => alcoholFromGravity({ start, finish });
  const rest = forecastFor(sheet, facts)?.curve.at(-1);
  if (!rest) {
    const { value, low, high } = to(relativeDensity(finishOf(inUse(sheet, facts.leftOut)).limit));
    return { value, low, high, by: 'limit' };
  }
  const { value, low, high } = to(rest.value);
  const [least, most] = [to(rest.high).value, to(Math.max(LIGHTEST, rest.low)).value];
  return {
    value,
    low: Math.max(0, value - Math.hypot(value - low, value - least)),
    high: value + Math.hypot(high - value, most - value),
    by: 'forecast',
  };
}

function afterTopUp(facts: Facts, gravity: number, alcohol: number): Strength['toppedUp'] {
  const litres = facts.ledger.reduce((sum, line) => sum + (line.cause === 'top-up' ? line.litres : 0), 0);
  const wine = litresNow(facts) - litres;
  if (litres === 0 || wine <= 0) return undefined;
  const parts = [
    { litres: wine, gravity, alcohol },
    { litres, gravity: 1 },
  ];
  return { litres, withWater: blend(parts).alcohol };
}
