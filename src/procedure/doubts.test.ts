import { describe, expect, test } from 'vitest';
import { CarefulMaker } from '../../tests/story/careful-maker';
import type { Maker } from '../../tests/story/maker';
import type { Gravity } from '../domain/gravity';
import { asOf } from './facts';
import { doubts } from './doubts';
import { builtInSheets } from './kits';
import type { Gate, Place } from './phase';

const sheet = builtInSheets.find(({ id }) => id === 'hedge-lantern')!;

const at = (place: Place) => new CarefulMaker(sheet).goTo(place);
const struckAfter = (gate: Gate, place: Place) => at(place).strike(gate);
const told = ({ facts, now, place }: Maker) =>
  doubts(sheet, asOf(facts, now), place).map(({ gate, when, since, struck, instead }) => ({
    gate,
    when,
    since: since === now.at,
    struck: struck.gravity,
    instead: instead?.gravity,
  }));

describe('a reading that a gate was passed on is struck', () => {
  test.each<[Gate, Place, string]>([
    ['proving mixed', 'pitch', 'before the yeast'],
    ['proving mixed', 'ferment', 'after the yeast'],
    ['proving dry', 'rack', 'before stabilising'],
    ['proving dry', 'degas', 'after stabilising'],
    ['proving dry', 'clear', 'after stabilising'],
    ['proving dry', 'stand', 'after bottling'],
    ['proving still', 'bottle', 'before bottling'],
    ['proving still', 'rest', 'after bottling'],
  ])('%s, while at %s: in doubt, %s', (gate, place, when) =>
    expect(told(struckAfter(gate, place))).toMatchObject([{ gate, when, since: true }]),
  );

  test('and both numbers are told: the one that was struck, and the one that stands', () =>
    expect(told(struckAfter('proving dry', 'clear'))).toMatchObject([{ struck: 9940, instead: 9940 }]));

  test('and none is told to stand where there is none', () => {
    const [doubt] = told(struckAfter('proving mixed', 'ferment'));
    expect(doubt).toMatchObject({ instead: undefined });
  });
});

describe('there is no doubt', () => {
  test('while nothing is struck', () => expect(told(at('rest'))).toEqual([]));

  test('about a reading that no gate was passed on', () => {
    const maker = at('clear');
    maker.wait(1).read({ reading: 9950 as Gravity });
    const entry = maker.facts.entries;
    maker.report({ type: 'reading struck', how: 'touch', entry, reason: 'it was another jar' });
    expect(told(maker)).toEqual([]);
  });

  test('when the start was read again before the yeast', () => {
    const maker = struckAfter('proving mixed', 'pitch');
    maker.read();
    expect(told(maker)).toEqual([]);
  });

  test('about a wine that was thrown away', () => {
    const maker = struckAfter('proving dry', 'clear');
    maker.report({ type: 'ended', how: 'touch', end: 'discarded', reason: 'it had turned to vinegar' });
    expect(told(maker)).toEqual([]);
  });

  test('about dryness when a new baseline has rested for its week', () => {
    const maker = struckAfter('proving dry', 'proving still');
    expect(maker.prove('proving still')?.code).toBe('dryness-in-doubt');
    maker.report({ type: 'sent back', how: 'touch', gate: 'proving still', clause: 'dryness-in-doubt' });
    expect(told(maker)).toMatchObject([{ gate: 'proving dry' }]);
    maker.goTo('bottle');
    expect(told(maker)).toEqual([]);
  });
});

test('a wine without stabiliser is told of by where it stands', () => {
  const { facts, now } = struckAfter('proving dry', 'clear');
  const bare = { ...asOf(facts, now), additions: [] };
  expect(doubts(sheet, bare, 'clear').map(({ when }) => when)).toEqual(['without stabiliser']);
});
