import { describe, expect, test } from 'vitest';
import { Maker } from '../../tests/story/maker';
import { RULES } from '../domain/gates/passing';
import type { Gravity } from '../domain/gravity';
import type { Celsius, Instant } from '../domain/unit';
import { builtInSheets } from '../procedure/kits';
import type { KitSheet } from '../procedure/kit-sheet';
import type { Place } from '../procedure/phase';
import type { BatchEvent, Report } from './batch-event';
import { refusal } from './refusal';

const sheetOf = (id: string): KitSheet => builtInSheets.find((sheet) => sheet.id === id) ?? builtInSheets[0]!;
const hedge = sheetOf('hedge-lantern');

const walked = new Map<string, Maker>();

/** A copy of a normal batch at a place: the way there is walked once. */
function at(place: Place, sheet = hedge): Maker {
  const key = `${sheet.id} ${place}`;
  const there = walked.get(key) ?? new Maker(sheet).goTo(place);
  walked.set(key, there);
  return there.fork();
}

const how = 'touch' as const;
const REASON = 'my own decision';

/** The code of the refusal, or "taken". */
function said(maker: Maker, report: Report, rest: Partial<BatchEvent> = {}): string {
  const event = { ...report, ...maker.now, ...rest } as BatchEvent;
  const { sheet, place } = maker;
  return refusal({ sheet, place, facts: maker.facts }, event)?.code ?? 'taken';
}

const noted: Report = { type: 'noted', how, text: 'well' };
const later = (maker: Maker, milliseconds: number) => (maker.now.at + milliseconds) as Instant;
const begunBy = (maker: Maker, milliseconds: number) => (maker.facts.begun.at + milliseconds) as Instant;

describe('when something is told', () => {
  const maker = at('ferment');
  test.each<[story: string, rest: Partial<BatchEvent>, said: string]>([
    ['now', {}, 'taken'],
    ['a millisecond before the last', { at: (maker.facts.now.at - 1) as Instant }, 'earlier-than-the-last'],
    ['at the very moment of the last', { at: maker.facts.now.at }, 'taken'],
    ['of a millisecond ago', { takenAt: later(maker, -1) }, 'taken'],
    ['of a millisecond from now', { takenAt: later(maker, 1) }, 'in-the-future'],
    ['of the moment the batch began', { takenAt: begunBy(maker, 0) }, 'taken'],
    ['of a millisecond before the batch', { takenAt: begunBy(maker, -1) }, 'before-the-batch'],
  ])('%s: %s', (_, rest, code) => expect(said(maker, noted, rest)).toBe(code));

  test('nothing once the batch has ended', () => expect(said(at('finished'), noted)).toBe('batch-has-ended'));

  test('the same event of another batch is asked about anew', () => {
    const event = { ...noted, ...maker.now } as BatchEvent;
    const ended = at('finished');
    const asked = [maker, ended, maker].map(({ sheet, place, facts }) => refusal({ sheet, place, facts }, event));
    expect(asked).toEqual([undefined, { code: 'batch-has-ended' }, undefined]);
  });
});

test('the same event at another place, or of another sheet, is asked about anew', () => {
  const { facts, now, sheet, act } = at('clean');
  const event = { type: 'act done', how, act: act!.id, ...now } as BatchEvent;
  const asked = (place: Place, of: KitSheet) => refusal({ sheet: of, place, facts }, event)?.code ?? 'taken';
  expect([asked('clean', sheet), asked('sanitise', sheet), asked('clean', sheet)]).toEqual([
    'taken',
    'not-this-act',
    'taken',
  ]);
  const left = { type: 'left out', how, sachet: 'oak', reason: REASON, ...now } as BatchEvent;
  const oak = (of: KitSheet) => refusal({ sheet: of, place: 'clean', facts }, left)?.code ?? 'taken';
  expect([oak(hedge), oak(sheetOf('ember-quay'))]).toEqual(['cannot-be-left-out', 'taken']);
});

describe('an answer', () => {
  const done = (act: string): Report => ({ type: 'act done', how, act });
  test.each<[story: string, place: Place, report: Report, said: string]>([
    ['to the act that waits', 'clean', done('wash gear 1'), 'taken'],
    ['to one that was done', 'clean', done('choose a place 1'), 'already-done'],
    ['to one that comes later', 'clean', done('rinse gear 1'), 'not-this-act'],
    ['where no act waits', 'proving dry', done('wash gear 2'), 'not-this-act'],
    ['of another kind than is asked', 'clean', { type: 'clock started', how, act: 'wash gear 1' }, 'not-this-act'],
    ['"done" to a count', 'prepare', done('lay out sachets 1'), 'not-this-act'],
  ])('%s, at %s', (_, place, report, code) => expect(said(at(place), report)).toBe(code));

  test('about something else than is asked by eye or hand', () => {
    const maker = at('ferment');
    const judged = (what: 'foam' | 'gas'): Report => ({ type: 'judged', how, what, yes: true, act: maker.act!.id });
    expect([said(maker, judged('foam')), said(maker, judged('gas'))]).toEqual(['taken', 'not-this-act']);
  });

  test('to an act whose check is shut: its reason', () => {
    const maker = at('prepare');
    while (maker.act?.kind !== 'litres') maker.answer();
    const litres = hedge.batchLitres as never;
    maker.report({ type: 'litres measured', how, act: maker.act.id, litres });
    expect(said(maker, done(maker.act.id))).toBe('vessel-too-small');
  });
});

describe('a clock', () => {
  const clock = (type: 'clock started' | 'clock paused' | 'clock resumed', act: string): Report => ({ type, how, act });
  const contact = () => {
    const maker = at('sanitise');
    maker.answer();
    return maker;
  };
  test('is started before it is paused, extended or over', () => {
    const maker = contact();
    const act = maker.act!.id;
    const extended: Report = { type: 'clock extended', how, act, seconds: 60 };
    const done: Report = { type: 'act done', how, act };
    expect([clock('clock paused', act), clock('clock resumed', act), extended, done].map((each) => said(maker, each))).toEqual(
      Array.from({ length: 4 }, () => 'clock-not-running'),
    );
    expect(said(maker, clock('clock started', act))).toBe('taken');
  });

  test('is started once, and resumed only where it is paused', () => {
    const maker = contact();
    const act = maker.act!.id;
    maker.report(clock('clock started', act));
    expect([said(maker, clock('clock started', act)), said(maker, clock('clock resumed', act))]).toEqual([
      'clock-already-running',
      'clock-already-running',
    ]);
    maker.report(clock('clock paused', act));
    expect([said(maker, clock('clock paused', act)), said(maker, clock('clock resumed', act))]).toEqual([
      'clock-not-running',
      'taken',
    ]);
    expect(said(maker, { type: 'clock extended', how, act, seconds: 60 })).toBe('taken');
  });

  test('of a wait runs to its end, and of a stir may be cut short', () => {
    const wait = contact();
    const act = wait.act!.id;
    wait.report(clock('clock started', act));
    const done: Report = { type: 'act done', how, act };
    const seen = [599.999, 600].map((seconds) => said(wait, done, { at: later(wait, seconds * 1000) }));
    expect(seen).toEqual(['clock-not-over', 'taken']);
    const stir = at('mix');
    while (stir.act?.kind !== 'stir') stir.answer();
    stir.report(clock('clock started', stir.act.id));
    expect(said(stir, { type: 'act done', how, act: stir.act.id })).toBe('taken');
  });

  test('of corked bottles standing is the calendar', () => {
    const maker = at('stand');
    const act = maker.act!;
    const until = act.kind === 'wait' ? act.until : maker.now.at;
    const done: Report = { type: 'act done', how, act: act.id };
    const whole = (more: number) => {
      const event = { ...done, ...maker.now, at: (until + more) as Instant } as BatchEvent;
      return refusal({ sheet: hedge, place: maker.place, facts: maker.facts }, event);
    };
    expect([whole(-1), whole(0)]).toEqual([{ code: 'clock-not-over', seconds: 1 }, undefined]);
  });
});

describe('at a gate', () => {
  const passed = (gate: 'proving dry' | 'proving clear', rules = RULES): Report => ({
    type: 'gate passed',
    how,
    gate,
    rules,
    readings: [],
  });
  const tooSoon = () => {
    const maker = at('ferment');
    maker.answer();
    for (const days of [7, 2, 1]) maker.wait(24 * days).read({ reading: 9940 as Gravity });
    return maker;
  };
  test.each<[story: string, maker: () => Maker, report: Report, said: string]>([
    ['passed when it is open', () => at('proving dry'), passed('proving dry'), 'taken'],
    ['not another than it stands at', () => at('proving dry'), passed('proving clear'), 'not-this-act'],
    ['not under rules that are yet to come', () => at('proving dry'), passed('proving dry', RULES + 1), 'not-this-act'],
    ['passed under earlier rules, whatever today’s say', () => at('proving clear'), passed('proving clear', RULES - 1), 'taken'],
    ['not while a clause fails', () => at('proving clear'), passed('proving clear'), 'clearing-too-short'],
    ['a day too soon', tooSoon, passed('proving dry'), 'too-soon'],
  ])('%s', (_, maker, report, code) => expect(said(maker(), report)).toBe(code));

  const override: Extract<Report, { type: 'overridden' }> = {
    type: 'overridden',
    how,
    question: 'proving dry',
    clause: 'too-soon',
    reason: REASON,
  };
  test.each<[story: string, maker: () => Maker, change: Partial<typeof override>, said: string]>([
    ['a clause that yields, for a reason', tooSoon, {}, 'taken'],
    ['not by voice', tooSoon, { how: 'voice' }, 'not-by-voice'],
    ['not for a letter', tooSoon, { reason: 'x' }, 'reason-too-short'],
    ['not for dots', tooSoon, { reason: '........' }, 'reason-too-short'],
    ['not one that does not fail', () => at('proving dry'), {}, 'does-not-yield'],
    ['not one that yields to nothing', () => at('proving dry').wait(1), { clause: 'not-dry' }, 'does-not-yield'],
    ['for eight letters', tooSoon, { reason: 'eight ok!' }, 'reason-too-short'],
    ['for eight letters and no fewer', tooSoon, { reason: 'eight oks' }, 'taken'],
  ])('overridden: %s', (_, maker, change, code) => expect(said(maker(), { ...override, ...change })).toBe(code));

  test('a way back is taken for a clause that fails there, and for no other', () => {
    const maker = at('proving gas-free');
    const back = (gate: 'proving gas-free' | 'proving still', clause: string): Report => ({ type: 'sent back', how, gate, clause });
    expect(said(maker, back('proving gas-free', 'gassy'))).toBe('no-such-way-back');
    maker.judge('gas', true);
    expect(
      [
        back('proving gas-free', 'gassy'),
        back('proving gas-free', 'gas-not-tested'),
        back('proving still', 'no-baseline'),
      ].map((each) => said(maker, each)),
    ).toEqual(['taken', 'no-such-way-back', 'no-such-way-back']);
  });

  test.each<[place: Place, what: 'gas' | 'clear' | 'foam', said: string]>([
    ['proving gas-free', 'gas', 'taken'],
    ['proving gas-free', 'clear', 'not-this-act'],
    ['proving clear', 'clear', 'taken'],
    ['proving clear', 'gas', 'not-this-act'],
    ['proving still', 'gas', 'taken'],
    ['proving still', 'clear', 'taken'],
    ['proving still', 'foam', 'not-this-act'],
    ['proving dry', 'gas', 'not-this-act'],
    ['clear', 'gas', 'not-this-act'],
  ])('at %s, without an act, %s is judged: %s', (place, what, code) =>
    expect(said(at(place), { type: 'judged', how, what, yes: true })).toBe(code),
  );
});

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
    const event = { ...read(9952), ...maker.now } as BatchEvent;
    expect(refusal({ sheet: hedge, place: 'proving dry', facts: maker.facts }, event)).toEqual({
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
    const struck: Report = { type: 'reading struck', how, entry: maker.facts.readings[0]!.entry, reason: 'misread' };
    expect([said(maker, struck), said(maker, { ...struck, entry: 1 })]).toEqual(['taken', 'nothing-to-correct']);
    maker.report(struck);
    expect(said(maker, struck)).toBe('nothing-to-correct');
  });
});

describe('the hydrometer in plain water', () => {
  const maker = at('prepare');
  maker.answer();
  const shows = (waterReading: number, act: string | undefined = maker.act!.id): Report => ({
    type: 'instrument checked',
    how,
    ...(act === undefined ? {} : { act }),
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
});

describe('a choice', () => {
  const leftOut = (sachet: string, reason = REASON, by: 'touch' | 'voice' = 'touch'): Report => ({
    type: 'left out',
    how: by,
    sachet,
    reason,
  });
  const ended = (reason: string, by: 'touch' | 'voice' = 'touch'): Report => ({
    type: 'ended',
    how: by,
    end: 'discarded',
    reason,
  });
  const sugar: Report = { type: 'sugar tested', how, gramsPerLitre: 1 };
  test.each<[story: string, place: Place, report: Report, said: string]>([
    ['a sachet left out, for a reason', 'stabilise', leftOut('sorbate'), 'taken'],
    ['not by voice', 'stabilise', leftOut('sorbate', REASON, 'voice'), 'not-by-voice'],
    ['not for a letter', 'stabilise', leftOut('sorbate', 'x'), 'reason-too-short'],
    ['not the yeast', 'mix', leftOut('yeast'), 'cannot-be-left-out'],
    ['not one that is in', 'ferment', leftOut('bentonite'), 'cannot-be-left-out'],
    ['not one that there is not', 'mix', leftOut('honey'), 'cannot-be-left-out'],
    ['the gentlest rung first', 'ferment', { type: 'helped', how, rung: 'read again' }, 'taken'],
    ['no rung before it', 'ferment', { type: 'helped', how, rung: 'warmed' }, 'not-the-next-rung'],
    ['an end, for a reason', 'ferment', ended(REASON), 'taken'],
    ['no end by voice', 'ferment', ended(REASON, 'voice'), 'not-by-voice'],
    ['no end for a letter', 'ferment', ended('x'), 'reason-too-short'],
    ['sugar tested in wine', 'ferment', sugar, 'taken'],
    ['not before the yeast', 'mix', sugar, 'no-yeast-yet'],
  ])('%s, at %s', (_, place, report, code) => expect(said(at(place), report)).toBe(code));

  test('what cannot be left out is named as it is printed, or as it was said', () => {
    const maker = at('mix');
    const named = (sachet: string) =>
      refusal(
        { sheet: hedge, place: 'mix', facts: maker.facts },
        { ...leftOut(sachet), ...maker.now } as BatchEvent,
      );
    expect(['yeast', 'honey'].map(named)).toEqual([
      { code: 'cannot-be-left-out', sachet: 'Wine yeast' },
      { code: 'cannot-be-left-out', sachet: 'honey' },
    ]);
  });

  test('a sachet is left out once, and each rung climbed once', () => {
    const maker = at('ferment');
    maker.report(leftOut('sorbate'));
    maker.report({ type: 'helped', how, rung: 'read again' });
    expect(
      [
        leftOut('sorbate'),
        { type: 'helped', how, rung: 'read again' } as const,
        { type: 'helped', how, rung: 'warmed' } as const,
      ].map((each) => said(maker, each)),
    ).toEqual(['cannot-be-left-out', 'not-the-next-rung', 'taken']);
  });

  test('a time away is taken where it is safe', () => {
    const maker = at('clear');
    const away = (days: number): Report => ({
      type: 'away planned',
      how,
      from: maker.now.at,
      until: later(maker, days * 86_400_000),
    });
    expect([away(20), away(60), away(0)].map((each) => said(maker, each))).toEqual([
      'taken',
      'not-safe-to-leave',
      'not-safe-to-leave',
    ]);
  });
});
