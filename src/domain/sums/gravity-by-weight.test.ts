import { expect, test } from 'vitest';
import { gravityByWeight } from './gravity-by-weight';

const at = (wineGrams: number, celsius = 20, scaleGrams = 1) =>
  gravityByWeight({ waterGrams: 750, wineGrams, celsius, scaleGrams });

test.each([
  [750, 20, 1],
  [817.5, 20, 1.08989],
  [745.5, 20, 0.99401],
])('wine of %d g where water is 750, at %d °C, is %d', (wineGrams, celsius, gravity) =>
  expect(at(wineGrams, celsius).value).toBeCloseTo(gravity, 5),
);

test('cold wine is heavier against cold water than it will be at 20 °C', () =>
  expect(at(745.5, 10).value).toBeCloseTo(0.9933, 4));

test('a kitchen scale is too coarse for a gate, a letter scale is not', () => {
  expect(at(745.5).high - at(745.5).value).toBeCloseTo(0.0019, 4);
  expect(at(745.5, 20, 0.1).high - at(745.5, 20, 0.1).value).toBeCloseTo(0.0011, 4);
});

test.each([
  [99, 99, 20],
  [750, 700, 20],
  [750, 900, 20],
  [750, 750, 41],
])('%d g of water, %d g of wine at %d °C is refused', (waterGrams, wineGrams, celsius) =>
  expect(() => gravityByWeight({ waterGrams, wineGrams, celsius })).toThrow(RangeError),
);
