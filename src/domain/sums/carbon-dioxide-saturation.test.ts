import { expect, test } from 'vitest';
import { carbonDioxideSaturation } from './carbon-dioxide-saturation';

test.each([
  [20, 1.46],
  [10, 1.97],
])('wine of 12 % vol under an airlock at %d °C holds %d g/L', (celsius, held) =>
  expect(carbonDioxideSaturation({ celsius, alcohol: 12, bar: 1.01325 })).toBeCloseTo(held, 2),
);

test.each([
  [-1, 12, 1],
  [41, 12, 1],
  [20, 21, 1],
  [20, 12, 11],
])('%d °C, %d % vol, %d bar is refused', (celsius, alcohol, bar) =>
  expect(() => carbonDioxideSaturation({ celsius, alcohol, bar })).toThrow(RangeError),
);
