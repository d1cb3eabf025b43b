import { describe, expect, test } from 'vitest';
import { correctHydrometer } from '../../src/domain/sums/correct-hydrometer';
import { balling } from '../../src/domain/sums/ground/balling';
import { rootBetween } from '../../src/domain/sums/ground/root-between';
import { tabarie } from '../../src/domain/sums/ground/tabarie';
import { waterDensity } from '../../src/domain/sums/water-density';

/** What a 20 °C hydrometer shows in a wine of Balling's alcohol, with the extract that makes it that heavy at 20 °C. */
function shownIn(start: number, gravity: number, celsius: number): number {
  const alcohol = balling(start, gravity).alcohol / 100;
  const extract = rootBetween((share) => tabarie({ alcohol, extract: share }, 20) - gravity, 0, 0.4);
  const glass = 1 + 25e-6 * (celsius - 20);
  return (tabarie({ alcohol, extract }, celsius) * waterDensity(celsius) * glass) / waterDensity(20);
}

const wines = [1.07, 1.08, 1.09].flatMap((start) =>
  [0.99, 0.992, 0.994, 1, 1.01, 1.02].flatMap((gravity) =>
    [10, 15, 25, 30].map((celsius) => ({ start, gravity, celsius })),
  ),
);

describe.each(wines)(
  'wine from $start that stands at $gravity, read at $celsius °C',
  ({ start, gravity, celsius }) => {
    const given = { reading: shownIn(start, gravity, celsius), celsius, calibratedAt: 20 } as const;
    const far = celsius === 10 || celsius === 30;
    const doubt = gravity <= 0.994 ? 0.00026 : far ? 0.0008 : 0.0004;

    test('is right to a fifth of the last digit when the start is told', () =>
      expect(Math.abs(correctHydrometer({ ...given, start }) - gravity)).toBeLessThan(0.00002));

    test(`is right to ${doubt} when it is not`, () =>
      expect(Math.abs(correctHydrometer(given) - gravity)).toBeLessThan(doubt));
  },
);
