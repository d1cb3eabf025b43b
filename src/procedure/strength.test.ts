import { describe, expect, test } from 'vitest';
import { Maker } from '../../tests/story/maker';
import { near } from '../../tests/reference/near';
import type { Gravity } from '../domain/gravity';
import type { Litres } from '../domain/unit';
import { builtInSheets } from './kits';
import { strength } from './strength';

const [sheet] = builtInSheets;
const at = (place: Parameters<Maker['goTo']>[0]) => new Maker(sheet!).goTo(place);
const of = ({ facts }: Maker) => strength(sheet!, facts);

describe('how strong it is', () => {
  test('is nothing before the start was read', () => expect(of(at('mix'))).toBeUndefined());

  test('is nothing yet before the yeast, and the limit tells how far it may go', () => {
    const { start, now, alcohol, ahead } = of(at('pitch'))!;
    expect({ start, now, alcohol: alcohol.value }).toEqual({ start: 1.067, now: 1.067, alcohol: 0 });
    expect(ahead).toEqual({ by: 'limit', value: near(9.3, 0), low: near(9, 0), high: near(9.7, 0) });
  });

  test('on the way, the forecast tells', () => {
    const maker = at('ferment').wait(5 * 24);
    maker.read();
    const { alcohol, ahead } = of(maker)!;
    expect(ahead?.by).toBe('forecast');
    expect(ahead!.value).toBeGreaterThan(alcohol.value);
    expect([ahead!.low < ahead!.value, ahead!.value < ahead!.high]).toEqual([true, true]);
  });

  test('once proven, it is what the readings tell, beside the simple rule', () => {
    const { alcohol, ahead, sugar } = of(at('stabilise'))!;
    expect(ahead).toBeUndefined();
    expect(alcohol.simpleRule).toBeCloseTo(131.25 * (1.067 - 0.994), 1);
    expect(Math.abs(alcohol.value - alcohol.simpleRule)).toBeLessThan(0.6);
    expect(sugar.low).toBe(0);
  });

  test('a reading of sweetened wine does not make it weaker', () => {
    const maker = at('top up');
    const before = of(maker);
    maker.read({ reading: 10_060 as Gravity });
    expect(maker.facts.readings.at(-1)?.gravity).toBe(10_060);
    expect(of(maker)).toEqual(before);
  });

  test('topping up with water would', () => {
    const maker = at('top up');
    const { alcohol } = of(maker)!;
    const ledger = [...maker.facts.ledger, { entry: 999, cause: 'top-up', litres: 1 as Litres } as const];
    const wine = maker.facts.ledger.reduce((sum, { litres }) => sum + litres, 0);
    expect(strength(sheet!, { ...maker.facts, ledger })?.toppedUp).toEqual({
      litres: 1,
      withWater: near((alcohol.value * wine) / (wine + 1), 9),
    });
  });
});
