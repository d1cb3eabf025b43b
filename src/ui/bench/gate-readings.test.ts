import { describe, expect, test } from 'vitest';
import type { Gravity } from '../../domain/gravity';
import type { Celsius } from '../../domain/unit';
import { builtInSheets } from '../../procedure/kits';
import { Maker } from '../../../tests/story/maker';
import { bandAt, readingsAt } from './gate-readings';

const sheet = builtInSheets[0]!;
const marks = (maker: Maker) =>
  readingsAt('proving dry', sheet, maker.facts).map(({ reading, mark }) => [reading.read, mark]);

describe('the readings of the dryness gate', () => {
  test('hold the start, the way, and what counts', () => {
    const maker = new Maker(sheet).goTo('proving dry');
    expect(marks(maker)).toEqual([
      [10_670, 'earlier'],
      [expect.any(Number), 'earlier'],
      [9940, 'counted'],
      [9940, 'counted'],
    ]);
  });

  test('tell cold, gassy and struck apart', () => {
    const maker = new Maker(sheet).goTo('proving dry');
    maker.wait(1).read({ wineCelsius: 15 as Celsius });
    maker.wait(1).read({ degassed: false });
    maker.wait(1).read({ reading: 9930 as Gravity });
    maker.report({ type: 'reading struck', how: 'touch', entry: maker.facts.entries, reason: 'wrong jar' });
    expect(marks(maker).slice(-3)).toEqual([
      [9940, 'cold'],
      [9940, 'gassy'],
      [9930, 'struck'],
    ]);
  });

  test('are held against the limit', () =>
    expect(bandAt('proving dry', sheet, new Maker(sheet).facts)).toEqual({ kind: 'limit', highest: 9960 }));
});

test('the last gate holds its readings against the baseline, within what the scale can show', () => {
  const maker = new Maker(sheet).goTo('proving still');
  const baseline = maker.facts.readings.find(({ entry }) => entry === maker.facts.baseline)!.gravity;
  expect(bandAt('proving still', sheet, maker.facts)).toEqual({
    kind: 'baseline',
    highest: baseline + 12,
    lowest: baseline - 12,
  });
});

test('gates that ask for no reading show none', () =>
  expect(readingsAt('proving gas-free', sheet, new Maker(sheet).goTo('proving gas-free').facts)).toEqual([]));
