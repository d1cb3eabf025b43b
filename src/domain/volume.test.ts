import { expect, test } from 'vitest';
import type { Litres } from './unit';
import { inUnit, parseVolume, type VolumeUnit } from './volume';

const LOWEST = 3 as Litres;
const HIGHEST = 60 as Litres;

// By definition: the US gallon is 231 cubic inches of 2.54³ cm³; the imperial gallon is 4.54609 L.
test.each<[given: string, unit: VolumeUnit, litres: number]>([
  ['23', 'litres', 23],
  ['22,7', 'litres', 22.7],
  ['6', 'US gallons', (6 * 231 * 2.54 ** 3) / 1000],
  ['5', 'imperial gallons', 22.73045],
])('%s %s is understood', (given, unit, litres) => {
  const parsed = parseVolume(given, unit, LOWEST, HIGHEST);
  expect(parsed.ok && parsed.value).toBeCloseTo(litres, 9);
});

test('the same six gallons differ by a fifth', () =>
  expect(6 / inUnit(6 as Litres, 'US gallons') / (6 / inUnit(6 as Litres, 'imperial gallons'))).toBeCloseTo(
    0.8327,
    4,
  ));

test.each(['2.9', '61', 'lots'])('%s litres is refused with the limits', (given) =>
  expect(parseVolume(given, 'litres', LOWEST, HIGHEST)).toEqual({
    ok: false,
    problem: { code: 'volume-misread', given, unit: 'litres', lowest: 3, highest: 60 },
  }),
);
