import { expect, test } from 'vitest';
import { alcoholByVolumeFromMass } from './alcohol-by-volume-from-mass';

test.each([
  [0, 0],
  [8.0149, 10],
  [9.641, 12],
  [100, 100],
])('%d % by mass is %d % vol', (byMass, byVolume) =>
  expect(alcoholByVolumeFromMass(byMass)).toBeCloseTo(byVolume, 3),
);

test.each([-1, 101])('%d % is refused', (byMass) =>
  expect(() => alcoholByVolumeFromMass(byMass)).toThrow(RangeError),
);
