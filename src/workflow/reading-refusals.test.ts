import { describe, expect, test } from 'vitest';
import { anotherHydrometer } from '../../tests/story/persevere';
import { at, hedge, how, refused, said } from '../../tests/story/refused';
import type { Gravity } from '../domain/gravity';
import type { Celsius, Instant } from '../domain/unit';
import type { Place } from '../procedure/phase';
import type { BatchEvent, Report } from './batch-event';
import { refusal } from './refusal';

describe('a reading', () => {
  const read = (reading: number, rest: Partial<Extract<Report, { type: 'reading taken' }>> = {}): Report => ({
    type: 'reading taken',
    how,
    reading: reading as Gravity,
    sampleCelsius: 20 as Celsius,
    wineCelsius: 21 as Celsius,
    degassed: true,
    returned: true,
    ...rest,
  });
  test.each<[story: string, place: Place, report: Report, said: string]>([
    ['before the hydrometer was checked', 'prepare', read(10_000), 'hydrometer-not-checked'],
    ['before there is must', 'clean', read(10_000), 'not-this-act'],
    ['of must', 'proving mixed', read(10_670), 'taken'],
    ['of wine', 'proving dry', read(9940), 'taken'],
    ['once the wine is bottled', 'rest', read(9940), 'not-this-act'],
    ['at the lowest that the correction knows', 'proving mixed', read(9700), 'taken'],
    ['below that', 'proving mixed', read(9699), 'sample-out-of-reach'],
    ['at the highest', 'proving mixed', read(11_800), 'taken'],
    ['above that', 'proving mixed', read(11_801), 'sample-out-of-reach'],
    ['a shade higher than the last', 'proving dry', read(9944), 'taken'],
    ['higher than the last', 'proving dry', read(9945), 'reading-went-up'],
    ['higher than the last, and confirmed', 'proving dry', read(9945, { confirmed: true }), 'taken'],
    ['0.010 lower within the day', 'proving dry', read(9840), 'taken'],
    ['more than that', 'proving dry', read(9839), 'reading-jumped'],
    ['of the must, far from the one before it', 'proving mixed', read(10_300), 'taken'],
    ['of sweetened wine, far from the ones before that', 'clear', read(10_050), 'reading-went-up'],
    ['of sweetened wine, before its first', 'top up', read(10_050), 'taken'],
  ])('%s, at %s', (_, place, report, code) => expect(said(at(place), report)).toBe(code));

  test('is taken where an act asks for it, though nobody told the guide of a must', () => {
    const maker = at('ferment');
    while (maker.act?.kind !== 'reading') maker.answer();
    const { act, now, facts } = maker;
    const done = Object.fromEntries(Object.entries(facts.done).filter(([id]) => id !== 'fill to mark 1'));
    const asked = [{ act: act.id }, {}].map((of) => {
      const event = { ...read(9940, { confirmed: true, ...of }), ...now } as BatchEvent;
      return refusal({ sheet: hedge, place: 'ferment', facts: { ...facts, done } }, event)?.code;
    });
    expect(asked).toEqual([undefined, 'not-this-act']);
  });

  test('at the very moment of the yeast is one of the wine', () => {
    const maker = at('pitch');
    while (!maker.facts.pitched) maker.answer();
    maker.read({ reading: 10_600 as Gravity });
    expect([10_500, 10_499].map((reading) => said(maker, read(reading)))).toEqual([
      'taken',
      'reading-jumped',
    ]);
  });

  test('may fall by 0.010 for every day since the last', () => {
    const maker = at('proving dry').wait(48);
    expect([9740, 9739].map((reading) => said(maker, read(reading)))).toEqual(['taken', 'reading-jumped']);
  });

  test('told late is held to the one before it, not to the one after', () => {
    const maker = at('ferment');
    for (const reading of [10_500, 10_000]) maker.wait(120).read({ reading: reading as Gravity });
    const [before] = maker.facts.readings.slice(-2);
    const told = (hours: number, reading: number): string =>
      said(maker, read(reading, { takenAt: (before!.takenAt + hours * 3_600_000) as Instant }));
    expect([told(1, 10_490), told(0, 10_490), told(1, 10_300), told(48, 10_300)]).toEqual([
      'taken',
      'taken',
      'reading-jumped',
      'taken',
    ]);
  });

  test('says by how much it went up', () => {
    const maker = at('proving dry');
    expect(refused(maker, read(9952))).toEqual({
      code: 'reading-went-up',
      by: 12,
    });
  });

  test('is within reach by what the glass would show if it were not off', () => {
    const maker = at('prepare');
    maker.answer();
    maker.report({
      type: 'instrument checked',
      how,
      act: maker.act!.id,
      division: 10,
      calibratedAt: 20,
      waterReading: 10_020 as Gravity,
      waterCelsius: 20 as Celsius,
    });
    maker.goTo('proving mixed');
    expect([9719, 9721, 11_819, 11_821].map((reading) => said(maker, read(reading)))).toEqual([
      'sample-out-of-reach',
      'taken',
      'taken',
      'sample-out-of-reach',
    ]);
  });

  test('is struck where it stands, and once', () => {
    const maker = at('proving dry');
    const struck: Report = {
      type: 'reading struck',
      how,
      entry: maker.facts.readings[0]!.entry,
      reason: 'misread',
    };
    expect([said(maker, struck), said(maker, { ...struck, entry: 1 })]).toEqual([
      'taken',
      'nothing-to-correct',
    ]);
    maker.report(struck);
    expect(said(maker, struck)).toBe('nothing-to-correct');
  });
});

describe('the hydrometer in plain water', () => {
  const maker = at('prepare');
  maker.answer();
  const shows = (waterReading: number, act: { act?: string } = { act: maker.act!.id }): Report => ({
    type: 'instrument checked',
    how,
    ...act,
    division: 10,
    calibratedAt: 20,
    waterReading: waterReading as Gravity,
    waterCelsius: 20 as Celsius,
  });
  test.each<[waterReading: number, said: string]>([
    [10_000, 'taken'],
    [10_050, 'taken'],
    [9950, 'taken'],
    [10_051, 'water-misread'],
    [9949, 'water-misread'],
    [9600, 'water-misread'],
    [11_900, 'water-misread'],
  ])('shows %s: %s', (waterReading, code) => expect(said(maker, shows(waterReading))).toBe(code));

  test('is checked without being asked only where there is none', () => {
    expect([said(maker, shows(10_000, {})), said(at('ferment'), shows(10_000, {}))]).toEqual([
      'taken',
      'not-this-act',
    ]);
  });

  test('is shown to it again by the act that asks for it, though it was shown before', () => {
    const early = at('prepare');
    expect(early.report(anotherHydrometer)).toBeUndefined();
    while (early.act?.kind !== 'instrument') early.answer();
    expect(early.answer()).toBeUndefined();
  });
});
