import { describe, expect, test } from 'vitest';
import { Maker } from '../../tests/story/maker';
import { anotherHydrometer } from '../../tests/story/persevere';
import { HOUR } from '../domain/calendar';
import type { Litres } from '../domain/unit';
import { litresNow } from '../procedure/facts';
import type { KitSheet } from '../procedure/kit-sheet';
import { builtInSheets } from '../procedure/kits';
import { looksAgain } from '../procedure/look-again';
import type { Mishap } from '../procedure/mishap';
import type { Place } from '../procedure/phase';
import type { Report } from './batch-event';

const [hedge] = builtInSheets.filter(({ id }) => id === 'hedge-lantern') as [KitSheet];
const at = (place: Place): Maker => new Maker(hedge).goTo(place);

type Told = Extract<Report, { type: 'mishap told' }>;
const told = (mishap: Mishap, rest: Partial<Told> = {}): Told => ({
  type: 'mishap told',
  how: 'key',
  mishap,
  ...rest,
});

describe('a mishap wants another look', () => {
  test('when its time has come, and again until all is well', () => {
    const maker = at('ferment');
    maker.report(told('foamed over'));
    const [look] = looksAgain(maker.facts, maker.place);
    expect(look).toEqual({
      entry: maker.facts.entries,
      mishap: 'foamed over',
      due: maker.now.at + 12 * HOUR,
    });
    const { entry } = look!;
    maker.wait(12).report({ type: 'looked again', how: 'touch', entry, well: false });
    expect(looksAgain(maker.facts, maker.place)).toEqual([
      { entry, mishap: 'foamed over', due: maker.now.at + 12 * HOUR },
    ]);
    maker.wait(12).report({ type: 'looked again', how: 'touch', entry, well: true });
    expect(looksAgain(maker.facts, maker.place)).toEqual([]);
    expect(maker.report({ type: 'looked again', how: 'touch', entry, well: true })?.code).toBe(
      'nothing-to-look-at',
    );
  });
});

describe('what follows from a mishap', () => {
  test('lost litres are gone from the ledger, and from the bottles', () => {
    const maker = at('clear');
    const before = litresNow(maker.facts);
    maker.report(told('wine spilled', { litres: 3 as Litres }));
    expect(litresNow(maker.facts)).toBeCloseTo(before - 3, 9);
  });

  test('a second yeast moves the days, and readings from before it tell of the must', () => {
    const maker = at('ferment').wait(60);
    expect(maker.report(told('pitched again'))).toBeUndefined();
    expect(maker.facts.pitched?.at).toBe(maker.now.at);
    expect(maker.goTo('proving dry').day).toBeGreaterThanOrEqual(hedge.dry.minimumDays - 0.5);
  });

  test('a broken hydrometer holds readings up until another was checked', () => {
    const maker = at('ferment');
    maker.answer();
    maker.report(told('hydrometer broken'));
    expect([maker.act?.kind, maker.act?.id]).toEqual(['instrument', 'check hydrometer 2']);
    expect(maker.read()?.code).toBe('hydrometer-not-checked');
    maker.answer();
    expect(maker.act?.kind).toBe('reading');
  });

  test('in the middle of a gate another hydrometer is checked without an act, and only where there is none', () => {
    const maker = at('proving dry');
    expect(maker.report(anotherHydrometer)?.code).toBe('not-this-act');
    maker.report(told('hydrometer broken'));
    expect(maker.report(anotherHydrometer)).toBeUndefined();
    expect(maker.read()).toBeUndefined();
  });

  test('a stabiliser that went in early is not asked for again, and the other one only behind the proof', () => {
    const maker = at('ferment');
    maker.report(told('stabiliser too early', { sachet: 'sorbate' }));
    maker.goTo('stabilise');
    while (maker.act?.kind !== 'account') maker.answer();
    expect(maker.act.sachets.map(({ id }) => id)).toEqual(['sulphite']);
    const acts = [];
    for (; maker.place === 'stabilise'; maker.answer()) acts.push(maker.act.id);
    expect(acts).toEqual(['stabilisers in hand 1', 'add sachet sulphite', 'stir in sulphite']);
  });

  test('a hydrometer that was told to be gone by mistake is checked in water before the next reading', () => {
    const maker = at('top up');
    maker.report(told('hydrometer in the wine'));
    const { entry } = maker.facts.mishaps.at(-1)!;
    maker.report({ type: 'mishap struck', how: 'key', entry, reason: 'it was the other jar' });
    const asked = [];
    for (; maker.place === 'top up'; maker.answer()) asked.push(maker.act?.kind);
    expect(asked.slice(-2)).toEqual(['instrument', 'reading']);
  });

  test('glass that was told by mistake is taken back with a reason; what is in the wine is not', () => {
    const maker = at('clear');
    maker.report(told('hydrometer in the wine'));
    const strike = (how: 'key' | 'voice', reason: string) =>
      maker.report({ type: 'mishap struck', how, entry: maker.facts.mishaps.at(-1)?.entry ?? 0, reason })
        ?.code;
    expect(strike('voice', 'every piece was found')).toBe('not-by-voice');
    expect(strike('key', '.')).toBe('reason-too-short');
    expect(strike('key', 'every piece was found')).toBeUndefined();
    maker.report(told('topped up unasked', { litres: 1 as Litres }));
    expect(strike('key', 'it was not topped up')).toBe('nothing-to-correct');
  });
});
