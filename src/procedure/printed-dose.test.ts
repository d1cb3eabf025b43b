import { describe, expect, test } from 'vitest';
import { near } from '../../tests/reference/near';
import { builtInSheets } from './kits';
import type { KitSheet, Sachet } from './kit-sheet';
import { printedDose } from './printed-dose';

const sheet = (...sachets: Partial<Sachet>[]): KitSheet =>
  ({ ...builtInSheets[0]!, sachets: sachets.map((sachet) => ({ count: 1, ...sachet })) }) as KitSheet;

describe('what the sachets bring', () => {
  test.each<[story: string, contents: 'sulphite' | 'sorbate', sachet: Partial<Sachet>, dose: number]>([
    ['4 g of metabisulphite in 23 L', 'sulphite', { contents: ['sulphite'], grams: 4 }, 100.2],
    ['two sachets of 5 g of sorbate', 'sorbate', { contents: ['sorbate'], grams: 5, count: 2 }, 324.5],
    ['a kilogram by a slip', 'sulphite', { contents: ['sulphite'], grams: 1000 }, 25_058],
  ])('%s', (_, contents, sachet, dose) =>
    expect(printedDose(sheet(sachet), contents, 23)).toEqual(near(dose, dose > 1000 ? -1 : 1)),
  );

  test.each<[story: string, sachet: Partial<Sachet>]>([
    ['no mass', { contents: ['sulphite'] }],
    ['something else in it', { contents: ['sulphite', 'sorbate'], grams: 8 }],
    ['only sorbate', { contents: ['sorbate'], grams: 5 }],
  ])('is not told of a sachet with %s', (_, sachet) =>
    expect(printedDose(sheet(sachet), 'sulphite', 23)).toBeUndefined(),
  );
});
