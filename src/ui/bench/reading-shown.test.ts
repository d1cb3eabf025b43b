import { describe, expect, test } from 'vitest';
import { asGravity } from '../../domain/gravity';
import { builtInSheets } from '../../procedure/kits';
import { nothingYet } from '../../procedure/facts';
import type { Instant } from '../../domain/unit';
import type { Act } from '../../procedure/step';
import { readingShown } from './reading-shown';

const sheet = builtInSheets.find(({ id }) => id === 'hedge-lantern')!;
const facts = nothingYet({ at: 0 as Instant, offsetMinutes: 0 }, 18);
const act = (step: Act['step'], kind: 'reading' | 'instrument' = 'reading'): Act => ({
  id: `${step} 1`,
  step,
  nth: 1,
  done: false,
  kind,
});
const read = (gravity: number) =>
  ({ ...facts, readings: [{ gravity: asGravity(gravity), struck: false }] }) as never;

describe('the drawn hydrometer', () => {
  test('floats in water when it is checked, and is held against nothing', () =>
    expect(readingShown('prepare', act('check hydrometer', 'instrument'), sheet, facts)).toEqual({
      at: 10_000,
      because: 'in water',
    }));

  test('floats in the middle of the sheet’s range before the must was read', () => {
    const { at, because, band } = readingShown('mix', act('read start'), sheet, facts);
    expect({ because, kind: band?.kind }).toEqual({ because: 'in the range', kind: 'start' });
    expect(at * 2).toBeCloseTo((band?.highest ?? 0) + (band?.lowest ?? 0), -1);
  });

  test('floats where it was last read, with the limit of the finish', () =>
    expect(readingShown('ferment', act('read towards dry'), sheet, read(1.012))).toEqual({
      at: 10_120,
      because: 'as last read',
      band: { kind: 'limit', highest: 9960 },
    }));

  test('is held against no limit where the reading itself becomes the baseline', () =>
    expect(readingShown('top up', act('read baseline'), sheet, read(0.994)).band).toBeUndefined());

  test('at a gate is held against what the gate asks for', () =>
    expect(readingShown('proving mixed', undefined, sheet, read(1.06)).band?.kind).toBe('start'));
});
