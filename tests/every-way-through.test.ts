import { test } from 'vitest';
import { builtInSheets } from '../src/procedure/kits';
import { explore } from './explore/explore';
import { Maker } from './story/maker';
test.each(builtInSheets)('$name', { timeout: 600000 }, (sheet) => {
  const t = performance.now();
  const m = new Maker(sheet).goTo('ferment');
  const e = explore(sheet, m, 0, () => undefined);
  console.log(
    sheet.name,
    e.states,
    e.transitions,
    [...e.places],
    e.stuck.slice(0, 3),
    e.stuck.length,
    performance.now() - t,
  );
});
