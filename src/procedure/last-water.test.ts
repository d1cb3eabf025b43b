import { describe, expect, test } from 'vitest';
import { near } from '../../tests/reference/near';
import type { Celsius, Litres } from '../domain/unit';
import { builtInSheets } from './kits';
import { lastWater } from './last-water';

const [sheet] = builtInSheets;
const pour = (litres: number, celsius: number, water: number, target: number, tap?: number) =>
  lastWater(sheet!, {
    litres: litres as Litres,
    celsius: celsius as Celsius,
    water: water as Litres,
    target: target as Celsius,
    tap: tap as Celsius | undefined,
  });

describe('the last water', () => {
  test('as warm as the batch should be, where the batch is', () =>
    expect(pour(13, 22, 10, 22)).toEqual({ needed: { code: 'pour', celsius: near(22, 6) } }));

  test('lands where it was meant to, when it is poured so', () => {
    const { needed } = pour(13, 16, 10, 22);
    expect(needed.code).toBe('pour');
    expect(needed.celsius).toBeGreaterThan(22 + (6 * 13 * 0.9) / 10);
    expect(pour(13, 16, 10, 22, needed.celsius).fromTap).toBeCloseTo(22, 6);
  });

  test.each([
    ['scalding', 13, 5, 10, 28],
    ['impossible', 20, 10, 2, 28],
    ['impossible', 20, 35, 3, 20],
  ])('is %s where it is', (code, litres, celsius, water, target) =>
    expect(pour(litres, celsius, water, target).needed.code).toBe(code),
  );

  test('takes a cupful of juice for no thicker than juice is', () =>
    expect(pour(0.5, 20, 22, 21, 15).fromTap).toBeCloseTo(15.1, 0));
});
