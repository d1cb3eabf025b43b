import { expect, test } from 'vitest';
import { alcoholFromGravity } from './alcohol-from-gravity';

test.each([
  [1.06, 0.996, 8.54, 8.4],
  [1.07, 0.996, 9.91, 9.71],
  [1.085, 0.995, 12.14, 11.81],
  [1.09, 0.996, 12.71, 12.34],
  [1.1, 0.996, 14.13, 13.65],
])('from %d to %d is %d % vol, by the simple rule %d', (start, finish, value, simpleRule) => {
  const alcohol = alcoholFromGravity({ start, finish });
  expect(alcohol.value).toBeCloseTo(value, 2);
  expect(alcohol.simpleRule).toBeCloseTo(simpleRule, 1);
});

test.each([
  [0.001, 0.34],
  [0.002, 0.4],
])('on a scale of %d it is sure to %d % vol', (division, by) => {
  const { value, low, high } = alcoholFromGravity({ start: 1.09, finish: 0.996, division });
  expect(high - value).toBeCloseTo(by, 1);
  expect(value - low).toBeCloseTo(by, 1);
});

test('a rise is no alcohol', () =>
  expect(alcoholFromGravity({ start: 1.09, finish: 1.092 })).toMatchObject({
    value: 0,
    low: 0,
    simpleRule: 0,
  }));

test.each([
  [0.999, 0.996],
  [1.171, 0.996],
  [1.09, 0.979],
  [1.09, 1.171],
])('from %d to %d is refused', (start, finish) =>
  expect(() => alcoholFromGravity({ start, finish })).toThrow(RangeError),
);
