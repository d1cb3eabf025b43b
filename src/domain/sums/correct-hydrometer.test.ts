import { describe, expect, test } from 'vitest';
import { correctHydrometer } from './correct-hydrometer';

const at = (celsius: number, reading: number, calibratedAt: 20 | 15.56 = 20) =>
  correctHydrometer({ reading, celsius, calibratedAt });

describe('an instrument made for 20 °C', () => {
  test.each([0.985, 0.994, 0.998, 1, 1.03, 1.085, 1.16])('is left alone at 20 °C: %d', (reading) =>
    expect(at(20, reading)).toBeCloseTo(reading, 12),
  );

  test.each([
    ['must of 22 °Brix', 1.0919, 30, 0.0032],
    ['must of 20 °Brix', 1.0829, 10, -0.0023],
    ['dry wine', 0.993, 10, -0.0018],
    ['dry wine', 0.993, 25, 0.0013],
    ['water', 1, 15, -0.0008],
    ['water', 0.9991, 25, 0.0009],
  ])('in %s that reads %d at %d °C is off by %d', (_, reading, celsius, correction) =>
    expect(at(celsius, reading) - reading).toBeCloseTo(correction, 3),
  );
});

describe('an instrument made for 60 °F', () => {
  test.each([
    [1.0, 15.56, 1.0],
    [0.9993, 20, 1.0],
    [1.04855, 15.56, 1.04833],
    [1.04759, 20, 1.04833],
    [1.08961, 25, 1.09189],
  ])('that reads %d at %d °C means %d at 20/20', (reading, celsius, gravity) =>
    expect(at(celsius, reading, 15.56)).toBeCloseTo(gravity, 4),
  );
});

describe('a batch whose start is known', () => {
  const young = { reading: 1.01, celsius: 10, calibratedAt: 20 } as const;

  test('is corrected as the young wine that it is, not as thin must', () => {
    expect(correctHydrometer(young) - 1.01).toBeCloseTo(-0.0014, 4);
    expect(correctHydrometer({ ...young, start: 1.09 }) - 1.01).toBeCloseTo(-0.002, 4);
  });

  test('is must at its start', () =>
    expect(correctHydrometer({ ...young, reading: 1.09, start: 1.09 })).toBeCloseTo(
      correctHydrometer({ ...young, reading: 1.09 }),
      4,
    ));
});

test.each([
  [0.969, 20],
  [1.181, 20],
  [1, -1],
  [1, 41],
])('a reading of %d at %d °C is refused', (reading, celsius) =>
  expect(() => at(celsius, reading)).toThrow(RangeError),
);
