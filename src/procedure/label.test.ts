import { describe, expect, test } from 'vitest';
import { Maker } from '../../tests/story/maker';
import { builtInSheets } from './kits';
import { labelOf } from './label';

const [hedge, chalk] = ['hedge-lantern', 'chalk-meadow'].map((kit) =>
  builtInSheets.find(({ id }) => id === kit)!,
) as [(typeof builtInSheets)[number], (typeof builtInSheets)[number]];

describe('what the labels say', () => {
  test('of a wine in its bottles: how many, how strong, since when, and until when to wait', () => {
    const { sheet, facts } = new Maker(hedge).goTo('label');
    const label = labelOf(sheet, facts);
    expect(label.bottles).toBe(facts.filled);
    expect(label.bottled).toBe(facts.done['fill and close 1']?.at);
    expect((label.restUntil! - label.bottled!) / 86_400_000).toBeGreaterThan(27);
    expect(label.alcohol?.value).toBeGreaterThan(8);
    expect(label.alcohol?.value).toBeLessThan(12);
  });

  test('only the allergens of what went in, sulphite also where the sheet forgot to say so', () => {
    const forgetful = { ...hedge, sachets: hedge.sachets.map(({ allergen: _, ...sachet }) => sachet) };
    const fermenting = new Maker(hedge).goTo('ferment');
    expect(labelOf(hedge, fermenting.facts).allergens).toEqual([]);
    for (const sheet of [hedge, forgetful])
      expect(labelOf(sheet, new Maker(sheet).goTo('label').facts).allergens).toEqual(['sulphite', 'fish']);
    expect(labelOf(chalk, new Maker(chalk).goTo('label').facts).allergens).toContain('sulphite');
  });

  test('before there are bottles: how many there will be, and no date', () => {
    const { sheet, facts } = new Maker(hedge).goTo('clear');
    const label = labelOf(sheet, facts);
    expect(label.bottles).toBeGreaterThan(25);
    expect(label.bottled).toBeUndefined();
    expect(label.restUntil).toBeUndefined();
  });

  test('what was decided against the sheet', () => {
    const maker = new Maker(hedge).goTo('proving clear');
    maker.report({
      ...{ type: 'overridden', how: 'touch', question: 'proving clear' },
      ...{ clause: 'not-looked-at', reason: 'guests are coming' },
    });
    const { overrides } = labelOf(hedge, maker.facts);
    expect(overrides.map(({ clause, reason }) => [clause, reason])).toEqual([
      ['not-looked-at', 'guests are coming'],
    ]);
  });

  test('which sachets were left out, by their printed names', () => {
    const maker = new Maker(hedge).goTo('stabilise');
    const sorbate = hedge.sachets.find(({ contents }) => contents.includes('sorbate'))!;
    maker.report({ type: 'left out', how: 'touch', sachet: sorbate.id, reason: 'drunk within a week' });
    expect(labelOf(hedge, maker.facts).leftOut).toEqual([
      { printed: sorbate.printed, reason: 'drunk within a week' },
    ]);
  });
});
