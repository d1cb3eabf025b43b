import { expect, test } from 'vitest';
import { waterDensity } from './water-density';

test.each([
  [4, 999.975],
  [20, 998.207],
  [40, 992.215],
])('water at %d °C weighs %d kg/m³', (celsius, density) =>
  expect(waterDensity(celsius)).toBeCloseTo(density, 3),
);

test.each([-0.1, 40.1, Number.NaN, Number.POSITIVE_INFINITY])('%d °C is no water at the bench', (celsius) =>
  expect(() => waterDensity(celsius)).toThrow(
    new RangeError(`water temperature must be 0 to 40, not ${celsius}`),
  ),
);
