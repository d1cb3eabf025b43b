import { describe, expect, test } from 'vitest';
import { Maker } from '../../tests/story/maker';
import { HOUR } from '../domain/calendar';
import type { Instant, Litres } from '../domain/unit';
import type { KitSheet } from '../procedure/kit-sheet';
import { builtInSheets } from '../procedure/kits';
import type { Mishap } from '../procedure/mishap';
import type { Place } from '../procedure/phase';
import { wrappersDue } from '../procedure/wrappers';
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

describe('a mishap is refused in one clear sentence, and nothing changes', () => {
  const soon = (maker: Maker) => (maker.now.at + HOUR) as Instant;
  const long = (maker: Maker) => (maker.facts.begun.at - HOUR) as Instant;

  test.each<[why: string, place: Place, telling: (maker: Maker) => Told, code: string]>([
    ['that cannot have happened yet', 'ferment', () => told('crystals'), 'cannot-have-happened'],
    ['that cannot happen any more', 'clear', () => told('foamed over'), 'cannot-have-happened'],
    ['about bottles that are not filled', 'bottle', () => told('closures rising'), 'cannot-have-happened'],
    [
      'with a time in the future',
      'ferment',
      (maker) => told('too cold', { takenAt: soon(maker) }),
      'in-the-future',
    ],
    [
      'from before the batch',
      'ferment',
      (maker) => told('too cold', { takenAt: long(maker) }),
      'before-the-batch',
    ],
    ['without its sachet', 'ferment', () => told('wrong sachet'), 'which-sachet'],
    [
      'with a sachet of another kit',
      'ferment',
      () => told('wrong sachet', { sachet: 'moonshine' }),
      'not-on-sheet',
    ],
    [
      'with a sachet of another kind',
      'ferment',
      () => told('stabiliser too early', { sachet: 'finings' }),
      'not-that-kind',
    ],
    ['against the journal: it is in', 'ferment', () => told('forgot bentonite'), 'already-in'],
    [
      'against the journal: it is in, early',
      'fine',
      () => told('wrong sachet', { sachet: 'sorbate' }),
      'already-in',
    ],
    [
      'against the journal: it is not in',
      'ferment',
      () => told('sachet still full', { sachet: 'sorbate' }),
      'not-in-yet',
    ],
    [
      'against the journal: the yeast works',
      'rack',
      () => told('sachet still full', { sachet: 'yeast' }),
      'journal-says-otherwise',
    ],
    ['without its litres', 'ferment', () => told('wine spilled'), 'how-many-litres'],
    [
      'with more litres than there are',
      'ferment',
      () => told('wine spilled', { litres: 60 as Litres }),
      'more-than-there-is',
    ],
    [
      'by voice, where it changes the wine',
      'ferment',
      () => told('wrong sachet', { how: 'voice', sachet: 'sorbate' }),
      'not-by-voice',
    ],
  ])('%s', (_, place, telling, code) => {
    const maker = at(place);
    const before = maker.facts;
    expect(maker.report(telling(maker))?.code).toBe(code);
    expect(maker.facts).toBe(before);
  });

  test('twice the same, until it is time to look again', () => {
    const maker = at('ferment');
    expect(maker.report(told('too cold'))).toBeUndefined();
    expect(maker.report(told('too cold'))?.code).toBe('told-already');
    expect(maker.wait(24).report(told('too cold'))).toBeUndefined();
  });

  test('by voice is taken where the wine stays what it is', () =>
    expect(at('ferment').report(told('silent airlock', { how: 'voice' }))).toBeUndefined());
});

describe('the empty wrappers', () => {
  const count = (empty: string[]): Report => ({ type: 'wrappers counted', how: 'touch', empty });

  test('are those of the sachets that went in since they were last counted', () => {
    const maker = at('ferment');
    expect(wrappersDue(hedge, maker.facts).map(({ id }) => id)).toEqual(['bentonite', 'yeast']);
    expect(maker.report(count(['yeast', 'bentonite']))).toBeUndefined();
    expect(wrappersDue(hedge, maker.facts)).toEqual([]);
    expect(maker.report(count([]))?.code).toBe('nothing-to-look-at');
  });

  test('that are one too many, or one too few, are told by name', () =>
    expect(at('ferment').report(count(['yeast', 'sorbate']))).toEqual({
      code: 'wrappers-differ',
      tooMany: [hedge.sachets.find(({ id }) => id === 'sorbate')?.printed],
      tooFew: [hedge.sachets.find(({ id }) => id === 'bentonite')?.printed],
    }));
});
