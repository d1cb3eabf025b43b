import { expect, test } from 'vitest';
import { near } from '../../../tests/reference/near';
import { foamRoom } from './foam-room';

test.each([
  [30, 'enough', 7, 0],
  [28.75, 'enough', 5.75, 0],
  [27, 'tight', 4, 1.4],
  [25, 'tight', 2, 2.3],
  [24, 'too-small', 1, 2.3],
  [20, 'too-small', -3, 2.3],
])('23 litres in a vessel of %d: %s, %d over, hold back %d', (brimLitres, code, litres, holdBackLitres) =>
  expect(foamRoom({ brimLitres, batchLitres: 23 })).toEqual({
    code,
    litres: near(litres, 9),
    holdBackLitres: near(holdBackLitres, 9),
  }),
);

test.each([
  [0, 23],
  [30, 0],
  [201, 23],
])('%d for %d is refused', (brimLitres, batchLitres) =>
  expect(() => foamRoom({ brimLitres, batchLitres })).toThrow(RangeError),
);
