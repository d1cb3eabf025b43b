import fc from 'fast-check';
import { beforeEach, describe, expect, test } from 'vitest';
import { builtInSheets } from '../src/procedure/kits';
import { writeBatchFile } from '../src/workflow/batch-file';
import { importBatch } from '../src/workflow/import-batch';
import { Journal, type Told } from '../src/workflow/journal';
import { removeBatch } from '../src/workflow/remove-batch';
import { replay } from '../src/workflow/replay';
import { draws } from './story/draws';
import { Maker } from './story/maker';
import { asTold, batch, BEGUN, Device, sheet, sure, whole } from './story/tabs';
import { contents, tamper, TwoDatabases } from './story/two-databases';

let device: Device;
let disk: TwoDatabases;
beforeEach(() => {
  device = new Device();
  disk = new TwoDatabases();
});

const tab = (options = {}) => device.tab(disk.store(), options);
const begun = async (id?: string) => sure(await Journal.begin(tab(), batch(id)));
const opened = async (id = 'one', options = {}) => sure(await Journal.open(tab(options), id));
const noted = (text: string): Told => ({ type: 'noted', how: 'touch', text });

describe.each(builtInSheets)('a whole batch of $name', (kit) => {
  const story = new Maker(kit).goTo('finished');

  test('is the same when it is closed and opened again, and when its events are replayed', async () => {
    const journal = sure(await Journal.begin(tab(), batch('one', kit)));
    await device.relive(journal, story.journal);
    expect(whole(await opened())).toEqual(whole(journal));
    expect(replay(journal.header, journal.events)).toEqual({ snapshot: journal.snapshot });
    expect(journal.events.length).toBe(story.journal.length);
  });

  test('is the same after export, a wiped device, and import', async () => {
    const journal = sure(await Journal.begin(tab(), batch('one', kit)));
    await device.relive(journal, story.journal);
    const file = writeBatchFile(journal.header, journal.events);
    disk = new TwoDatabases();
    expect(await importBatch(tab(), file)).toEqual({ ok: true, value: { id: 'one', outcome: 'new' } });
    const again = await opened();
    expect(whole(again)).toEqual(whole(journal));
    expect(writeBatchFile(again.header, again.events)).toBe(file);
  });
});

describe('a batch half-way', () => {
  const story = new Maker(sheet).goTo('pitch').journal;

  test.each([
    ['the first database is wiped', 'first'],
    ['the second database is wiped', 'second'],
  ] as const)('is whole after %s, and goes on', async (_, which) => {
    const journal = await begun();
    await device.relive(journal, story.slice(0, 10));
    const before = whole(journal);
    await tamper(disk[which], (table) => table.clear());
    expect(whole(await opened())).toEqual(before);
    await device.relive(journal, story.slice(10));
    expect(whole(await opened())).toEqual(whole(journal));
    expect(await contents(disk.second)).toEqual(await contents(disk.first));
  });

  test('goes on at once in a tab that was open when the first database was wiped', async () => {
    const journal = await begun();
    await device.relive(journal, story.slice(0, 10));
    await tamper(disk.first, (table) => table.clear());
    await device.relive(journal, story.slice(10));
    expect(journal.events.length).toBe(story.length);
  });

  test.each<[string, (table: IDBObjectStore) => void, object]>([
    [
      'a header that is ahead',
      (table) => table.delete(['event', 'one', 10]),
      { code: 'journal-gap', entry: 10 },
    ],
    ['a gap', (table) => table.delete(['event', 'one', 4]), { code: 'journal-gap', entry: 4 }],
  ])('torn in both databases by %s shows what is left, and keeps the rest', async (_, tear, mismatch) => {
    await device.relive(await begun(), story.slice(0, 10));
    for (const database of [disk.first, disk.second]) await tamper(database, tear);
    const left = await contents(disk.first);
    const journal = await opened();
    expect({ mismatch: journal.mismatch, again: await journal.report(noted('more')) }).toEqual({
      mismatch,
      again: mismatch,
    });
    expect(await contents(disk.first)).toEqual(left);
  });

  test('whose last event was written without its header has that event', async () => {
    const journal = await begun();
    await device.relive(journal, story.slice(0, 9));
    const header = journal.header;
    await device.relive(journal, story.slice(9, 10));
    for (const database of [disk.first, disk.second])
      await tamper(database, (table) => table.put(header, ['header', 'one']));
    expect(whole(await opened())).toEqual(whole(journal));
  });

  test('is not disturbed by another batch between its events', async () => {
    const [one, two] = [await begun('one'), await begun('two')];
    for (const event of story) {
      device.now = event;
      await Promise.all([one.report(asTold(event)), two.report(asTold(event))]);
    }
    expect({ ...whole(two), header: { ...two.header, id: 'one', name: 'Batch one' } }).toEqual(whole(one));
    expect(one.events.length).toBe(story.length);
    expect(await removeBatch(tab(), 'two')).toBeUndefined();
    expect(await Journal.open(tab(), 'two')).toEqual({ ok: false, problem: { code: 'no-such-batch' } });
    expect(whole(await opened('one'))).toEqual(whole(one));
  });
});

describe('two tabs', () => {
  test('count once what both say', async () => {
    const [here, there] = [await begun(), await opened()];
    const first = asTold(new Maker(sheet).goTo('clean').journal[0]!);
    const answers = await Promise.all([here.report(first), there.report(first)]);
    expect(answers.filter(Boolean)).toEqual([{ code: 'already-done' }]);
    await Promise.all([here.refresh(), there.refresh()]);
    expect(here.events.length).toBe(1);
    expect(whole(there)).toEqual(whole(here));
  });

  type Turn = { where: 0 | 1; what: 'next act' | 'note'; wait: boolean };
  const turns = fc.array(
    fc.record<Turn>({
      where: fc.constantFrom(0, 1),
      what: fc.constantFrom('next act', 'note'),
      wait: fc.boolean(),
    }),
    { minLength: 1, maxLength: 10 },
  );

  test('that write in any order, hearing of each other or not, lose nothing and end equal', async () => {
    const acts = new Maker(sheet).goTo('sanitise').journal.map(asTold);
    await fc.assert(
      fc.asyncProperty(turns, fc.boolean(), async (order, deaf) => {
        disk = new TwoDatabases();
        device.now = BEGUN;
        await begun();
        const tabs = [await opened('one', { deaf }), await opened('one', { deaf })] as const;
        const said: { told: Told; answer: Promise<unknown> }[] = [];
        for (const { where, what, wait } of order) {
          const told =
            what === 'note' ? noted(`note ${String(said.length)}`) : acts[tabs[where].events.length];
          if (!told) continue;
          const answer = tabs[where].report(told);
          said.push({ told, answer });
          if (wait) await answer;
        }
        const answers = await Promise.all(said.map(({ answer }) => answer));
        await Promise.all(tabs.map((each) => each.refresh()));
        const taken = said.filter((_, index) => answers[index] === undefined).map(({ told }) => told);
        const kept = tabs[0].events.map(asTold);
        expect(kept.map(asText).toSorted()).toEqual(taken.map(asText).toSorted());
        expect(whole(tabs[1])).toEqual(whole(tabs[0]));
        expect(whole(await opened())).toEqual(whole(tabs[0]));
        expect(await contents(disk.second)).toEqual(await contents(disk.first));
        for (const each of tabs) each.close();
      }),
      draws(12, 200),
    );
  });
});

/** A report as text, for comparing what was taken with what is kept whatever the order. */
const asText = (told: Told): string =>
  JSON.stringify(Object.entries(told).toSorted(([a], [b]) => a.localeCompare(b)));
