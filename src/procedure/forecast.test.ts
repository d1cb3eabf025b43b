import { describe, expect, test } from 'vitest';
import { Maker, normalWine } from '../../tests/story/maker';
import { near } from '../../tests/reference/near';
import type { Gravity } from '../domain/gravity';
import type { ForecastDay } from '../domain/sums/forecast-gravity';
import type { Celsius, Instant, Litres } from '../domain/unit';
import { builtInSheets } from './kits';
import type { KitSheet } from './kit-sheet';
import { forecastFor, instantOf } from './forecast';

const sheet: KitSheet = builtInSheets[0]!;
/** Fermented up to a day, with a reading every other day. */
function until(day: number, celsius = 21, of = sheet): Maker {
  const maker = new Maker(of, { ...normalWine(of), celsius: 21 }).goTo('ferment');
  for (let next = 2; next <= day; next += 2) {
    maker.wait((next - maker.day) * 24);
    maker.read({ wineCelsius: celsius as Celsius });
  }
  return maker;
}
const forecast = ({ facts }: Maker) => forecastFor(sheet, facts);
const expected = (given: ForecastDay | undefined) => {
  if (given?.code !== 'expected') throw new Error(JSON.stringify(given));
  return given;
};

describe('a batch’s forecast', () => {
  test('is nothing before the yeast', () => expect(forecast(new Maker(sheet).goTo('pitch'))).toBeUndefined());

  /** How wide the four outcomes in five lie apart on the tenth day. */
  const spreadOnTen = (day: number): number => {
    const course = forecast(until(day))?.curve.find((point) => Math.abs(point.day - 10) < 0.6);
    return (course?.high ?? NaN) - (course?.low ?? NaN);
  };

  test('begins with the start gravity alone, and narrows with the readings', () => {
    const spreads = [0, 4, 8].map(spreadOnTen);
    expect(spreads[0]).toBeGreaterThan(0.01);
    expect(spreads[1]).toBeLessThan(spreads[0]! * 0.8);
    expect(spreads[2]).toBeLessThan(spreads[1]! * 0.8);
  });

  test('knows the day on which the limit was reached', () =>
    expect(forecast(until(10))?.limitReached).toEqual({ code: 'reached', day: near(10, 1) }));

  test('never has the gate open before the sheet’s day', () =>
    expect(expected(forecast(until(10))?.gateOpens).low).toBeGreaterThanOrEqual(sheet.dry.minimumDays));

  test('warns of wine that is too cold', () =>
    expect(forecast(until(4, 14))?.warnings).toEqual([
      expect.objectContaining({ code: 'cold', celsius: 14, warmEnough: 18 }),
    ]));

  test('does not count a struck reading, or one that gas has lifted', () => {
    const plain = until(4);
    const before = forecast(plain);
    const gassy = plain.fork();
    gassy.read({ reading: 10_600 as Gravity, degassed: false });
    expect(forecast(gassy)).toEqual(before);
    const misread = plain.fork();
    misread.read({ reading: 10_100 as Gravity });
    expect(forecast(misread)).not.toEqual(before);
    const { entry } = misread.facts.readings.at(-1)!;
    misread.report({ type: 'reading struck', how: 'key', entry, reason: 'held it against the light' });
    expect(forecast(misread)).toEqual(before);
  });

  test('takes water that was held back, and came in later, for no fall', () => {
    const { facts } = until(4);
    const held = { ...facts, brim: 24.9 as Litres };
    const later = { ...facts.now, at: (facts.now.at + 1) as Instant };
    const added = { ...held, done: { ...held.done, 'add held-back water 1': later } };
    const [all, one] = [forecastFor(sheet, held), forecastFor(sheet, added)];
    expect(one?.curve[0]?.value).toBeCloseTo(1 + ((all?.curve[0]?.value ?? 0) - 1) * 0.9, 3);
  });

  test('is over when dryness is proven', () => {
    expect(forecast(until(10).goTo('proving dry'))).toBeDefined();
    expect(forecast(until(10).goTo('stabilise'))).toBeUndefined();
  });

  test('counts its days from the yeast', () => {
    const { facts } = until(2);
    expect(instantOf(facts, 1.5)).toBe(facts.pitched!.at + 36 * 3_600_000);
  });

  test('is nothing beyond the sum’s reach', () => {
    const maker = until(2);
    const slow = { ...sheet, dry: { ...sheet.dry, minimumDays: 61 } };
    expect(forecastFor(slow, maker.facts)).toBeUndefined();
    maker.wait(60 * 24).read();
    expect(forecast(maker)).toBeUndefined();
  });
});
