import { expect, test } from 'vitest';
import { readingUncertainty } from './reading-uncertainty';

test.each([
  [0.001, 0.00043],
  [0.002, 0.00066],
])('a scale of %d is read to %d', (division, uncertainty) =>
  expect(readingUncertainty({ division })).toBeCloseTo(uncertainty, 5),
);

test('a worse thermometer and a worse hand make it worse', () =>
  expect(readingUncertainty({ division: 0.001, kelvin: 2, repeats: 0.001 })).toBeCloseTo(0.00115, 5));

test.each([
  { division: 0 },
  { division: 0.02 },
  { division: 0.001, kelvin: 6 },
  { division: 0.001, repeats: -0.001 },
])('%o is refused', (circumstances) => expect(() => readingUncertainty(circumstances)).toThrow(RangeError));
