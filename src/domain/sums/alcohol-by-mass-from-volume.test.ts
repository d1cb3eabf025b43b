import { expect, test } from 'vitest';
import { alcoholByMassFromVolume } from './alcohol-by-mass-from-volume';

test.each([
  [0, 0],
  [10, 8.0149],
  [12, 9.641],
  [100, 100],
])('%d % vol is %d % by mass', (byVolume, byMass) =>
  expect(alcoholByMassFromVolume(byVolume)).toBeCloseTo(byMass, 3),
);

test.each([-1, 101])('%d % is refused', (byVolume) =>
  expect(() => alcoholByMassFromVolume(byVolume)).toThrow(RangeError),
);
