import { expect, test } from 'vitest';
import { ethanolWaterDensity } from './ethanol-water-density';

test.each([
  [0, 20, 998.20123],
  [0.31, 13, 956.42],
  [0.88, -10, 848.57],
  [1, 20, 789.24],
])('a share of %d of alcohol at %d °C weighs %d kg/m³', (massFraction, celsius, density) =>
  expect(ethanolWaterDensity(massFraction, celsius)).toBeCloseTo(density, 2),
);

test.each([
  [-0.01, 20],
  [1.01, 20],
  [0.1, -21],
  [0.1, 41],
])('a share of %d at %d °C is refused', (massFraction, celsius) =>
  expect(() => ethanolWaterDensity(massFraction, celsius)).toThrow(RangeError),
);
