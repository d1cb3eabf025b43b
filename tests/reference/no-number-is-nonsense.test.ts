import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { SUMS } from './sums-and-ranges';

const numbersIn = (value: unknown): number[] =>
  typeof value === 'number'
    ? [value]
    : typeof value === 'object' && value !== null
      ? Object.values(value).flatMap(numbersIn)
      : [];
const ends = (ranges: readonly number[], end: 0 | 1) => ranges.filter((_, place) => place % 2 === end);
const within = (ranges: readonly number[]) =>
  ends(ranges, 0).map((min, place) => fc.double({ min, max: ends(ranges, 1)[place] ?? min, noNaN: true }));
const six = <Kind>(kinds: readonly Kind[], rest: Kind) =>
  Array.from({ length: 6 }, (_, place) => kinds[place] ?? rest) as [Kind, Kind, Kind, Kind, Kind, Kind];
const anything = fc.oneof(fc.double(), fc.constantFrom(0, -0, 1, 1.09, 20, -1e308, 1e308, 5e-324));

describe.each(Object.entries(SUMS))('%s', (name, { ranges, sum }) => {
  const numRuns = name === 'forecastGravity' ? 30 : 300;

  test('gives finite numbers everywhere in its range', () =>
    fc.assert(
      fc.property(...six(within(ranges), fc.constant(0)), (...given) => {
        expect(numbersIn(sum(...given)).filter((number) => !Number.isFinite(number))).toEqual([]);
      }),
      {
        seed: 20,
        numRuns,
        examples: [six(ends(ranges, 0), 0), six(ends(ranges, 1), 0)],
      },
    ));

  test('refuses plainly or gives finite numbers for anything at all', () =>
    fc.assert(
      fc.property(
        ...six(
          ends(ranges, 0).map(() => anything),
          fc.constant(0),
        ),
        (...given) => {
          try {
            expect(numbersIn(sum(...given)).filter((number) => !Number.isFinite(number))).toEqual([]);
          } catch (error) {
            if (!(error instanceof RangeError)) throw error;
          }
        },
      ),
      { seed: 20, numRuns },
    ));
});
