import { expect, test } from 'vitest';
import type { Gravity } from '../domain/gravity';
import { unfermented } from './unfermented';

const above = (tenThousandths: number) => unfermented((9960 + tenThousandths) as Gravity, 9960 as Gravity);

/** 2.1 g/L and 0.67 bar for each 0.001 near dryness: computed from Balling and the solubility of carbon dioxide. */
test('one thousandth above the limit is about two grams of sugar and two thirds of a bar', () => {
  const { grams, bar = 0 } = above(10);
  expect(grams).toBeCloseTo(2.1, 1);
  expect(bar).toBeGreaterThan(0.6);
  expect(bar).toBeLessThan(0.7);
});

test('at the limit nothing is left to tell', () => {
  const { grams, bar = 1 } = above(0);
  expect(grams).toBe(0);
  expect(bar).toBeLessThan(0.1);
});

test('far above it there is no pressure to tell: no bottle would hold it', () =>
  expect(above(300)).toEqual({ grams: 64.2 }));
