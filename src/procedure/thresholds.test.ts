import { describe, expect, test } from 'vitest';
import { Maker } from '../../tests/story/maker';
import type { Moment } from '../domain/calendar';
import { gasGone } from '../domain/gates/gas-gone';
import { fallenBright } from '../domain/gates/fallen-bright';
import { wineStill } from '../domain/gates/wine-still';
import { builtInSheets } from './kits';
import type { KitSheet } from './kit-sheet';
import { finishOf } from './limits';
import { GATES } from './phase';
import { thresholds, type Sourced } from './thresholds';

const [sheet] = builtInSheets as [KitSheet];
const facts = new Maker(sheet).goTo('proving still').facts;
const at = (gate: (typeof GATES)[number], change: Partial<KitSheet> = {}) =>
  thresholds(gate, { ...sheet, sources: {}, ...change }, facts);
const dry = (change: Partial<KitSheet['dry']>, sources: KitSheet['sources'] = {}) =>
  at('proving dry', { dry: { ...sheet.dry, ...change }, sources });
const number = (list: Sourced[], what: Sourced['what']) => list.find((each) => each.what === what);

const withSorbate = builtInSheets.find(({ sachets }) =>
  sachets.some(({ contents }) => contents.includes('sorbate')),
)!;

describe('a number that house and sheet both have', () => {
  test('is the sheet’s where the sheet is stricter, beside what the house asks', () =>
    expect(number(dry({ readings: 3 }, { 'dry.readings': 'leaflet, page 2' }), 'readings')).toEqual({
      what: 'readings',
      value: 3,
      from: 'sheet',
      where: 'leaflet, page 2',
      otherwise: 2,
    }));

  test('is the house’s where the sheet is laxer, beside what the sheet asks', () =>
    expect(number(dry({ hoursApart: 24 }), 'hours apart')).toEqual({
      what: 'hours apart',
      value: 48,
      from: 'house',
      otherwise: 24,
    }));

  test('is the sheet’s where both say the same', () =>
    expect(number(dry({ hoursApart: 48 }), 'hours apart')).toEqual({
      what: 'hours apart',
      value: 48,
      from: 'sheet',
    }));

  test('is the house’s where the sheet is silent', () =>
    expect(
      number(at('proving dry', { dry: { readings: 2, hoursApart: 48, minimumDays: 14 } }), 'dry limit'),
    ).toEqual({
      what: 'dry limit',
      value: 9960,
      from: 'house',
    }));

  test('says where on the sheet, by the last part of its path too', () =>
    expect(
      number(at('proving dry', { sources: { wineAtLeast: 'instructor' } }), 'wine at least'),
    ).toMatchObject({
      from: 'sheet',
      where: 'instructor',
    }));
});

test('a limit of dryness tightens when the sorbate is left out', () => {
  const lax: KitSheet = { ...withSorbate, dry: { ...withSorbate.dry, limit: 0.998 }, sources: {} };
  const sorbate = lax.sachets.find(({ contents }) => contents.includes('sorbate'))!;
  const without = { ...facts, leftOut: { [sorbate.id]: 'does not agree with me' } };
  expect([facts, without].map((known) => number(thresholds('proving dry', lax, known), 'dry limit'))).toEqual(
    [
      { what: 'dry limit', value: 9980, from: 'sheet', otherwise: 10_000 },
      { what: 'dry limit', value: 9960, from: 'house', otherwise: 9980 },
    ],
  );
});

describe('the numbers shown', () => {
  test('of dryness are those that the gate judges by', () => {
    const { limit, readings, hoursApart, wineAtLeast, minimumDays } = finishOf(sheet);
    expect(at('proving dry').map(({ what, value }) => [what, value])).toEqual([
      ['dry limit', limit],
      ['readings', readings],
      ['hours apart', hoursApart],
      ['wine at least', wineAtLeast],
      ['minimum days', minimumDays],
      ['resolution', 12],
    ]);
  });

  test('of the house alone are those of its gates', () => {
    const now: Moment = facts.now;
    const wanted = [
      gasGone([], 0),
      fallenBright({ judgements: [], clearingSince: now, minimumDays: 0, now }),
      wineStill({ baseline: facts.readings[0], readings: [], judgements: [], now }),
    ].map((verdict) => (verdict.open ? undefined : verdict.because));
    const shown = [
      number(at('proving gas-free'), 'quiet tests'),
      number(at('proving clear'), 'clear looks'),
      number(at('proving still'), 'resting days'),
    ];
    expect(wanted).toEqual(shown.map((each) => expect.objectContaining({ wanted: each?.value }) as unknown));
  });

  test.each(GATES)('%s has some, and none twice', (gate) => {
    const shown = at(gate).map(({ what }) => what);
    expect([shown.length > 0, new Set(shown).size]).toEqual([true, shown.length]);
  });
});
