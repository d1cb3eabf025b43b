import { describe, expect, test } from 'vitest';
import { builtInSheets } from '../../src/procedure/kits';
import { explore, type Depth } from '../explore/explore';
import { Maker } from '../story/maker';
import { sealBroken } from '../story/seals';

/** With corrections and every reading it takes a quarter of an hour a sheet, so that is for the night. */
const DEPTH: Depth =
  process.env['NIGHTLY'] === '1' ? { corrections: 1, thorough: true } : { corrections: 0, thorough: false };
const PATIENCE = 3_600_000;

describe.each(builtInSheets)('every way through $name, from the yeast on', (sheet) => {
  test(
    'enters no sealed act while its verdict is shut, and never comes to a dead end',
    { timeout: PATIENCE },
    () => {
      const found = explore(new Maker(sheet).goTo('ferment'), DEPTH, sealBroken);
      console.info(`${sheet.name}: ${String(found.states)} states, ${String(found.transitions)} transitions`);
      expect({ broken: found.broken, stuck: found.stuck }).toEqual({ broken: [], stuck: [] });
      expect([...found.places]).toEqual(
        expect.arrayContaining(['proving dry', 'stabilise', 'fine', 'bottle', 'finished']),
      );
    },
  );
});
