import { expect, test } from 'vitest';
import { near } from '../../../tests/reference/near';
import { headspace } from './headspace';

test('an inch in a neck of 30 mm is 18 ml', () =>
  expect(headspace({ boreMm: 30, mm: 25.4 })).toEqual({ mm: 25.4, ml: near(17.95, 2) }));

test('15 ml in the neck of a bottle is 56 mm', () =>
  expect(headspace({ boreMm: 18.5, ml: 15 })).toEqual({ mm: near(55.8, 1), ml: 15 }));

test.each([
  { boreMm: 9, mm: 10 },
  { boreMm: 201, mm: 10 },
  { boreMm: 30, mm: -1 },
  { boreMm: 30, ml: -1 },
])('%o is refused', (gap) => expect(() => headspace(gap)).toThrow(RangeError));
