import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { blend, type Part } from '../../src/domain/sums/blend';
import { holds, within } from './holds';

describe('a blend', () => {
  const part: fc.Arbitrary<Part> = fc.record({
    litres: within(0.1, 30),
    gravity: within(0.985, 1.35),
    alcohol: within(0, 16),
    sugar: within(0, 900),
    sulphurDioxide: within(0, 300),
    sorbicAcid: within(0, 400),
  });
  const same = (a: Part, b: Part) => {
    for (const name of Object.keys(a) as (keyof Part)[]) expect(a[name]).toBeCloseTo(b[name], 8);
  };

  test('keeps the mass of everything', () =>
    holds([part, part, part], (...parts) => {
      const blended = blend(parts);
      for (const name of ['gravity', 'alcohol', 'sugar', 'sulphurDioxide', 'sorbicAcid'] as const) {
        const before = parts.reduce((sum, each) => sum + each.litres * each[name], 0);
        expect(blended.litres * blended[name]).toBeCloseTo(before, 6);
      }
    }));

  test('does not mind the order', () => holds([part, part], (a, b) => same(blend([a, b]), blend([b, a]))));

  test('does not mind being made in two goes', () =>
    holds([part, part, part], (a, b, c) => {
      same(blend([blend([a, b]), c]), blend([a, blend([b, c])]));
      same(blend([a, b, c]), blend([a, blend([b, c])]));
    }));
});
