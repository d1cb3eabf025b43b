import { expect, test } from 'vitest';
import type { Gravity } from '../gravity';
import type { Celsius } from '../unit';
import { stricterFinish, type SheetFinish } from './finish';

const sheet: SheetFinish = {
  limit: 9960 as Gravity,
  readings: 2,
  hoursApart: 48,
  minimumDays: 12,
  wineAtLeast: 18 as Celsius,
  hasSorbate: true,
};

test.each<[rule: string, given: Partial<SheetFinish>, limit: number]>([
  ['the sheet’s limit holds', { limit: 9900 as Gravity }, 9900],
  ['at most 1.000 with sorbate', { limit: 9990 as Gravity }, 9990],
  ['never above 1.000, whatever the sheet says', { limit: 10050 as Gravity }, 10000],
  ['0.996 where the sheet names none', { limit: undefined }, 9960],
  ['0.996 at most without sorbate', { limit: 9990 as Gravity, hasSorbate: false }, 9960],
  ['lower without sorbate, where the sheet is stricter', { limit: 9920 as Gravity, hasSorbate: false }, 9920],
])('the dry limit: %s', (_, given, limit) =>
  expect(stricterFinish({ ...sheet, ...given }).limit).toBe(limit),
);

test('a sheet can ask for more of everything', () =>
  expect(stricterFinish({ ...sheet, readings: 3, hoursApart: 72, wineAtLeast: 20 as Celsius })).toEqual({
    limit: 9960,
    readings: 3,
    hoursApart: 72,
    wineAtLeast: 20,
    minimumDays: 12,
  }));

test('and for less of nothing', () =>
  expect(stricterFinish({ ...sheet, readings: 1, hoursApart: 0, wineAtLeast: 10 as Celsius })).toEqual({
    limit: 9960,
    readings: 2,
    hoursApart: 48,
    wineAtLeast: 18,
    minimumDays: 12,
  }));
