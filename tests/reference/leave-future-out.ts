import { forecastGravity, type ForecastReading } from '../../src/domain/sums/forecast-gravity';
import { tabarie } from '../../src/domain/sums/ground/tabarie';

/** What one forecast, made on a day from what was known then, turned out to be worth. */
export type Trial = {
  day: number;
  /** Days by which the limit was expected too late; absent where none was expected. */
  error?: number;
  /** Whether the limit was reached within the interval; absent where it was reached already. */
  limitInside?: boolean;
  /** For each later reading: within its day's interval? */
  inside: boolean[];
  stall: boolean;
};

/** After each reading but the last, forecasts from the readings so far and compares with the rest. */
export function leaveFutureOut(readings: readonly ForecastReading[], limit: number, truth?: number): Trial[] {
  return readings.slice(0, -1).map(({ day }, index) => {
    const { curve, limitReached, warnings } = forecastGravity(readings.slice(0, index + 1), { limit });
    const inside = readings.slice(index + 1).flatMap(({ day: later, gravity }) => {
      const ahead = curve.find((point) => Math.abs(point.day - later) < 1e-9);
      return ahead ? [gravity >= ahead.low && gravity <= ahead.high] : [];
    });
    const stall = warnings.some(({ code }) => code === 'stall');
    if (truth === undefined || truth <= day) return { day, inside, stall };
    if (limitReached.code !== 'expected') return { day, inside, stall, limitInside: false };
    const { value, low, high = Number.POSITIVE_INFINITY } = limitReached;
    return { day, inside, stall, error: value - truth, limitInside: truth >= low && truth <= high };
  });
}

/** The day on which readings pass a limit, between the two that lie about it. */
export function dayReached(readings: readonly ForecastReading[], limit: number): number | undefined {
  const after = readings.findIndex(({ gravity }) => gravity <= limit);
  const [above, below] = [readings[after - 1], readings[after]];
  if (!above || !below) return undefined;
  const share = (above.gravity - limit) / (above.gravity - below.gravity);
  return above.day + share * (below.day - above.day);
}

type Analysed = { day: number; sugar: number; alcohol: number; celsius: number };

/**
 * Gravities of a series that was analysed for sugar and alcohol only, by Tabarié's relation and a usual must.
 */
export function gravitiesOf(series: readonly Analysed[]): ForecastReading[] {
  const outset = series[0]?.sugar ?? 0;
  return series.map(({ day, sugar, alcohol, celsius }) => {
    const extract = (outset * 0.073) / 0.927 + sugar + 0.022 * (outset - sugar);
    let gravity = 1.03;
    for (let round = 0; round < 5; round++) {
      const litre = gravity * 998.2;
      gravity = tabarie({ alcohol: (alcohol * 7.8924) / litre, extract: extract / litre }, 20);
    }
    return { day, gravity, celsius };
  });
}

export const shareOf = (answers: readonly boolean[]): number =>
  answers.filter(Boolean).length / Math.max(1, answers.length);

export const middleOf = (numbers: readonly number[]): number =>
  numbers.toSorted((a, b) => a - b)[Math.floor(numbers.length / 2)] ?? Number.NaN;
