import { beforeEach, describe, expect, test } from 'vitest';
import { batch, BEGUN } from '../../tests/story/tabs';
import { contents, tamper, TwoDatabases } from '../../tests/story/two-databases';
import { ProblemError } from '../domain/problem';
import type { BatchEvent } from '../workflow/batch-event';
import type { BatchHeader } from '../workflow/batch-header';
import { firstHeader } from '../workflow/header-of';
import type { JournalStore } from '../workflow/journal-store';
import type { Database } from './database';

const noted = (text: string): BatchEvent => ({ type: 'noted', how: 'touch', text, ...BEGUN });
const header = (entries = 0, id = 'one'): BatchHeader => ({
  ...firstHeader({ ...batch(id), begun: BEGUN }),
  entries,
});
const refusing = (code: 'storage-full' | 'storage-refused'): Database => ({
  read: () => Promise.reject(new ProblemError({ code })),
  write: () => Promise.reject(new ProblemError({ code })),
  under: () => IDBKeyRange.only(0),
});

let disk: TwoDatabases;
beforeEach(() => (disk = new TwoDatabases()));

/** Whoever reads has what is still to be written to the second database written, and waits for it. */
const followed = (store: JournalStore) => store.headers();

const begun = async (entries: number) => {
  const store = disk.store();
  await store.create(header());
  for (let entry = 1; entry <= entries; entry += 1)
    await store.append('one', entry, noted(String(entry)), header(entry));
  await followed(store);
  return store;
};
const upTo = (entries: number) => Array.from({ length: entries }, (_, index) => noted(String(index + 1)));

describe('the store', () => {
  test('keeps one key per event and the header beside them, in both databases', async () => {
    await begun(2);
    const kept = new Map<string, unknown>([
      ['["event","one",1]', noted('1')],
      ['["event","one",2]', noted('2')],
      ['["header","one"]', header(2)],
    ]);
    expect([await contents(disk.first), await contents(disk.second)]).toEqual([kept, kept]);
  });

  test('gives back a batch, and all headers in the order in which they began', async () => {
    const store = await begun(3);
    const earlier = { ...header(0, 'two'), begun: { ...BEGUN, at: (BEGUN.at - 1) as never } };
    await store.create(earlier);
    expect(await store.read('one')).toEqual({ header: header(3), events: upTo(3) });
    expect(await store.headers()).toEqual([earlier, header(3)]);
    expect(await store.read('three')).toBeUndefined();
  });

  test.each([
    ['an entry that is there', 2],
    ['an entry that would leave a gap', 4],
  ])('never writes %s', async (_, entry) => {
    const store = await begun(2);
    const before = await contents(disk.first);
    expect(await store.append('one', entry, noted('another'), header(entry))).toBe('collision');
    expect(await contents(disk.first)).toEqual(before);
  });

  test('never writes an event whose key is taken though the header has not heard of it', async () => {
    const store = await begun(1);
    await tamper(disk.first, (table) => table.add(noted('torn'), ['event', 'one', 2]));
    expect(await store.append('one', 2, noted('another'), header(2))).toBe('collision');
    expect((await contents(disk.first)).get('["header","one"]')).toEqual(header(1));
  });

  test('never begins a batch over another, nor goes on with one that is removed', async () => {
    const store = await begun(1);
    expect(await store.create(header())).toBe('collision');
    await store.remove('one');
    expect(await store.append('one', 2, noted('2'), header(2))).toBe('collision');
    expect([await contents(disk.first), await contents(disk.second)]).toEqual([new Map(), new Map()]);
  });

  test('removes one batch and leaves the other', async () => {
    const store = await begun(2);
    await store.create(header(0, 'one-more'), []);
    await store.remove('one');
    expect([...(await contents(disk.first)).keys()]).toEqual(['["header","one-more"]']);
  });
});

describe('what is lost in one database', () => {
  const wipe = (table: IDBObjectStore) => table.clear();
  test.each<[string, (table: IDBObjectStore) => void]>([
    ['everything', wipe],
    ['the header', (table) => table.delete(['header', 'one'])],
    ['an event in the middle', (table) => table.delete(['event', 'one', 2])],
    ['an event that is damaged', (table) => table.put({ type: 'noted' }, ['event', 'one', 2])],
    [
      'the last event and its header',
      (table) => {
        table.delete(['event', 'one', 3]);
        table.put(header(2), ['header', 'one']);
      },
    ],
  ])('%s: comes from the other and is put back', async (_, lose) => {
    const store = await begun(3);
    const before = await contents(disk.first);
    for (const database of [disk.first, disk.second]) {
      await tamper(database, lose);
      expect(await store.headers()).toEqual([header(3)]);
      expect(await store.read('one')).toEqual({ header: header(3), events: upTo(3) });
      expect([await contents(disk.first), await contents(disk.second)]).toEqual([before, before]);
    }
  });

  test('a wiped database takes the next event, too', async () => {
    const store = await begun(2);
    await tamper(disk.first, wipe);
    expect(await store.append('one', 3, noted('3'), header(3))).toBe('collision');
    await store.read('one');
    expect(await store.append('one', 3, noted('3'), header(3))).toBe('written');
  });

  test('what is lost in both is named, and nothing is touched', async () => {
    const store = await begun(3);
    for (const database of [disk.first, disk.second])
      await tamper(database, (table) => table.delete(['event', 'one', 2]));
    const before = await contents(disk.first);
    expect(await store.read('one')).toEqual({
      header: header(3),
      events: upTo(1),
      problem: { code: 'journal-gap', entry: 2 },
    });
    expect(await contents(disk.first)).toEqual(before);
  });
});

describe('a database that refuses', () => {
  test('the second: it is told once, and the batch goes on', async () => {
    const store = disk.store(disk.first, refusing('storage-full'));
    await store.create(header());
    await store.append('one', 1, noted('1'), header(1));
    expect(await store.read('one')).toEqual({ header: header(1), events: upTo(1) });
    expect(await store.headers()).toEqual([header(1)]);
    expect(disk.warnings).toEqual([{ code: 'no-second-copy', reason: { code: 'storage-full' } }]);
  });

  test('the second, for a while: it is brought up afterwards', async () => {
    const store = await begun(1);
    await disk.store(disk.first, refusing('storage-refused')).append('one', 2, noted('2'), header(2));
    await store.append('one', 3, noted('3'), header(3));
    await followed(store);
    expect(await contents(disk.second)).toEqual(await contents(disk.first));
  });

  test('the first: what was kept is still read, and nothing counts as written', async () => {
    await begun(2);
    const store = disk.store(refusing('storage-refused'));
    expect(await store.read('one')).toEqual({ header: header(2), events: upTo(2) });
    await expect(store.append('one', 3, noted('3'), header(3))).rejects.toThrow('storage-refused');
    expect((await contents(disk.second)).size).toBe(3);
  });

  test('both: the refusal is told', async () => {
    const store = disk.store(refusing('storage-refused'), refusing('storage-full'));
    await expect(store.headers()).rejects.toThrow('storage-refused');
  });
});
