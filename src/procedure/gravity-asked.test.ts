import { describe, expect, test } from 'vitest';
import { makerAt } from '../../tests/story/scene';
import { gravityAsked } from './gravity-asked';

describe('what a hydrometer can plausibly read', () => {
  test('before the yeast lies around the start that the sheet names', () => {
    const { sheet, facts } = makerAt('mix', 'read start 1');
    const { lowest, highest } = gravityAsked('read start', sheet, facts);
    expect([lowest, highest]).toEqual([
      sheet.start.lowest * 10_000 - 400,
      sheet.start.highest * 10_000 + 400,
    ]);
  });

  test('afterwards lies below the last reading, or as little above it as a sweetening pack can lift it', () => {
    const { sheet, facts } = makerAt('proving dry');
    const last = facts.readings.at(-1)!.read;
    expect(gravityAsked(undefined, sheet, facts)).toEqual({ lowest: 9800, highest: last + 400 });
  });

  test('goes by no reading that was struck', () => {
    const { sheet, facts } = makerAt('proving dry');
    const struck = facts.readings.map((reading, nth) => ({ ...reading, struck: nth > 0 }));
    const first = facts.readings[0]!.read;
    expect(gravityAsked(undefined, sheet, { ...facts, readings: struck }).highest).toBe(first + 400);
  });

  test('is anything that a wine can be, where nothing was read yet', () => {
    const { sheet, facts } = makerAt('mix', 'read start 1');
    expect(gravityAsked(undefined, sheet, facts)).toEqual({ lowest: 9800, highest: 11_200 });
  });
});
