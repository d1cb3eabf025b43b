import { describe, expect, test } from 'vitest';
import { near } from '../../../tests/reference/near';
import { sorbateEnough } from './sorbate-enough';

describe('wine of 12 % vol at pH 3.4', () => {
  test.each([
    [120, 'enough', []],
    [90, 'too-little', []],
    [210, 'enough', ['OIV', 'EU']],
    [310, 'enough', ['OIV', 'EU', 'US']],
  ])('with %d mg/L: %s', (sorbicAcid, code, over) =>
    expect(sorbateEnough({ sorbicAcid, alcohol: 12, pH: 3.4 })).toEqual({
      code,
      needed: near(100.8, 1),
      over,
    }),
  );
});

test.each([
  ['half way between two strengths', 11.5, 3.5, 140],
  ['half way between two acidities', 12, 3.25, 84],
  ['stronger than the table', 16, 3.5, 67.2],
  ['sourer than the table', 12, 3.0, 71.7],
  ['where the table asks for more than is allowed', 10, 3.5, 200],
])('%s, what is needed is known', (_, alcohol, pH, needed) =>
  expect(sorbateEnough({ sorbicAcid: 0, alcohol, pH })).toEqual({
    code: 'too-little',
    needed: near(needed, 0),
    over: [],
  }),
);

test.each([
  ['weaker', 8, 3.4],
  ['milder', 12, 3.6],
])('wine %s than the table has no answer', (_, alcohol, pH) =>
  expect(sorbateEnough({ sorbicAcid: 210, alcohol, pH })).toEqual({ code: 'no-table', over: ['OIV', 'EU'] }),
);

test.each([
  [-1, 12, 3.4],
  [100, 21, 3.4],
  [100, 12, 2.7],
])('%d mg/L at %d % vol and pH %d is refused', (sorbicAcid, alcohol, pH) =>
  expect(() => sorbateEnough({ sorbicAcid, alcohol, pH })).toThrow(RangeError),
);
