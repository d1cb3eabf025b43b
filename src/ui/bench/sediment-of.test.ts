import { describe, expect, test } from 'vitest';
import { builtInSheets } from '../../procedure/kits';
import { asOf } from '../../procedure/facts';
import type { Gate } from '../../procedure/phase';
import type { Instant } from '../../domain/unit';
import { Maker } from '../../../tests/story/maker';
import { sedimentOf } from './sediment-of';

const DAY = 86_400_000;
const sheetOf = (id: string) => builtInSheets.find((sheet) => sheet.id === id)!;

function standingBefore(act: string, kit = 'hedge-lantern'): Maker {
  const maker = new Maker(sheetOf(kit));
  for (let n = 0; n < 500 && maker.act?.id !== act; n += 1)
    if (maker.act) maker.answer();
    else maker.prove(maker.place as Gate);
  expect(maker.act?.id).toBe(act);
  return maker;
}
const before = (act: string, days = 0, kit = 'hedge-lantern') => {
  const { sheet, facts } = standingBefore(act, kit);
  return sedimentOf(sheet, asOf(facts, { ...facts.now, at: (facts.now.at + days * DAY) as Instant }));
};

describe('sediment', () => {
  test('is none before the yeast', () => expect(before('close with airlock 1')).toBe(0));

  test('grows from day to day as it ferments, up to what a must leaves', () => {
    const days = [0, 3, 6, 60].map((each) => before('look for life 1', each));
    expect(days).toEqual(days.toSorted((a, b) => a - b));
    expect(days.at(-1)).toBeCloseTo(0.03 * 23, 10);
  });

  test('stays behind when the wine is siphoned off', () => {
    expect(before('siphon off 2')).toBeGreaterThan(0.5);
    expect(before('measure wine 2')).toBe(0);
  });

  test('falls again while the wine clears', () =>
    expect(before('look through the wine 1.1', 10)).toBeGreaterThan(before('leave to clear 1')));

  test('is gone while it is stirred up', () =>
    expect(
      builtInSheets
        .filter(({ sediment, moves }) => sediment === 'stir up' && !moves.some(({ when }) => when === 'dry'))
        .map(({ id }) => before('knock the surface 1', 0, id)),
    ).not.toContain(expect.toSatisfy((litres: number) => litres > 0)));
});
