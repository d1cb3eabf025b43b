import { describe, expect, test } from 'vitest';
import { daysBetween } from '../src/domain/calendar';
import { litresNow } from '../src/procedure/facts';
import type { KitSheet } from '../src/procedure/kit-sheet';
import { builtInSheets } from '../src/procedure/kits';
import { COURSE, isGate, type Place } from '../src/procedure/phase';
import { promisedDays } from '../src/procedure/schedule';
import { replay } from '../src/workflow/replay';
import { Maker } from './story/maker';

/** A phase in which a sheet has nothing to do is passed through unseen. */
const unseen = ({ bottle, degas }: KitSheet): Place[] => [
  ...(bottle.closure === 'cork' ? [] : (['stand'] as const)),
  ...(degas.first ? (['degas'] as const) : []),
];

describe.each(builtInSheets)('a normal batch of $name', (sheet) => {
  const maker = new Maker(sheet);
  const visited = maker.goTo('finished').visited;
  const dayOf = (act: string): number | undefined => {
    const { done, pitched } = maker.facts;
    const moment = done[act];
    return moment && pitched && daysBetween(pitched, moment);
  };

  test('goes through every phase and gate in the order of the procedure', () =>
    expect(visited).toEqual([...COURSE.filter((place) => !unseen(sheet).includes(place)), 'finished']));

  test('stabilises and bottles on the days that its sheet promises', () => {
    const [first] = sheet.sachets.filter(({ when }) => when === 'stabilise');
    expect({ stabilise: dayOf(`add sachet ${first?.id ?? ''}`), bottle: dayOf('fill and close 1') }).toEqual(
      promisedDays(sheet),
    );
  });

  test('uses every sachet of the sheet once', () =>
    expect(maker.facts.additions.map(({ sachet }) => sachet).toSorted()).toEqual(
      sheet.sachets.map(({ id }) => id).toSorted(),
    ));

  test('passes every gate once, and keeps that as facts', () =>
    expect(Object.keys(maker.facts.passed)).toEqual(COURSE.filter(isGate)));

  test('fills the bottles that the ledger has wine for, and leaves less than one more', () => {
    expect(litresNow(maker.facts)).toBeGreaterThanOrEqual(0);
    expect(litresNow(maker.facts)).toBeLessThan(sheet.bottle.millilitres / 1000 + 0.5);
  });

  test('is the same when its journal is read back', () =>
    expect(replay(maker.input, maker.journal)).toEqual({ snapshot: maker.snapshot }));
});
