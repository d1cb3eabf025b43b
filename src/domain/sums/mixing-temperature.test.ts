import { expect, test } from 'vitest';
import { mixingTemperature } from './mixing-temperature';

test.each([
  [
    'equal waters meet half way',
    [
      [10, 10, 1],
      [10, 40, 1],
    ],
    25,
  ],
  [
    'what is all as warm stays so',
    [
      [10, 21, 1.3],
      [13, 21, 1],
    ],
    21,
  ],
  [
    'concentrate holds less heat than water',
    [
      [10, 10, 1.33],
      [10, 40, 1],
    ],
    26.4,
  ],
  [
    'a litre of boiling water warms a batch by three degrees',
    [
      [22, 18, 1.085],
      [1, 100, 1],
    ],
    21.7,
  ],
])('%s', (_, parts, celsius) =>
  expect(
    mixingTemperature(
      parts.map(([litres = 0, degrees = 0, gravity = 1]) => ({ litres, celsius: degrees, gravity })),
    ),
  ).toBeCloseTo(celsius, 1),
);

test.each([
  ['nothing', []],
  ['ice', [{ litres: 1, celsius: -1 }]],
  ['steam', [{ litres: 1, celsius: 101 }]],
])('%s is refused', (_, parts) => expect(() => mixingTemperature(parts)).toThrow(RangeError));
