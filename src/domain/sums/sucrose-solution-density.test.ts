import { expect, test } from 'vitest';
import { sucroseSolutionDensity } from './sucrose-solution-density';

test.each([
  [0, 20, 998.203],
  [0.2, 20, 1080.977],
  [0.22, 30, 1086.443],
])('a share of %d of sugar at %d °C weighs %d kg/m³', (massFraction, celsius, density) =>
  expect(sucroseSolutionDensity(massFraction, celsius)).toBeCloseTo(density, 2),
);

test.each([
  [-0.01, 20],
  [0.86, 20],
  [0.2, -1],
  [0.2, 81],
])('a share of %d at %d °C is refused', (massFraction, celsius) =>
  expect(() => sucroseSolutionDensity(massFraction, celsius)).toThrow(RangeError),
);
