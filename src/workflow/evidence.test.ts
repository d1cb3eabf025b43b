import { expect, test } from 'vitest';
import { Maker } from '../../tests/story/maker';
import { sheet } from '../../tests/story/tabs';
import type { Gravity } from '../domain/gravity';
import type { Gate } from '../procedure/phase';
import { evidence } from './evidence';

/** At a gate, after further readings: how many of all readings there, counted from the newest, it is judged on. */
test.each<[Gate, string, Gravity[], number]>([
  ['proving mixed', 'the newest alone', [10_680, 10_670] as Gravity[], 1],
  ['proving dry', 'the counted ones, an old one left out', [], 2],
  ['proving gas-free', 'none', [], 0],
  ['proving clear', 'none', [9940] as Gravity[], 0],
  ['proving still', 'the baseline and all since', [9940, 9940] as Gravity[], 3],
])('%s is judged on %s', (gate, _, further, newest) => {
  const maker = new Maker(sheet).goTo(gate);
  for (const reading of further) maker.wait(1).read({ reading });
  const entries = maker.facts.readings.map(({ entry }) => entry);
  expect(evidence(gate, sheet, maker.facts)).toEqual(newest === 0 ? [] : entries.slice(-newest));
  expect(entries.length).toBeGreaterThan(newest);
});
