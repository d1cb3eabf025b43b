import { beforeEach, describe, expect, test } from 'vitest';
import { batch, BEGUN } from '../../tests/story/tabs';
import { contents, TwoDatabases } from '../../tests/story/two-databases';
import type { BatchEvent } from '../workflow/batch-event';
import type { BatchHeader } from '../workflow/batch-header';
import { firstHeader } from '../workflow/header-of';
import { MirroredJournalStore } from './mirrored-journal-store';

const noted = (text: string): BatchEvent => ({ type: 'noted', how: 'touch', text, ...BEGUN });
const header = (entries = 0): BatchHeader => ({ ...firstHeader({ ...batch('one'), begun: BEGUN }), entries });
const upTo = (entries: number) => Array.from({ length: entries }, (_, index) => noted(String(index + 1)));

let disk: TwoDatabases;
beforeEach(() => (disk = new TwoDatabases()));

/** A batch in both databases. */
async function begun(entries: number): Promise<void> {
  const store = disk.store();
  await store.create(header(entries), upTo(entries));
  await store.headers();
}

describe('the second database', () => {
  /** Does nothing until it is told to. */
  const putOff = () => {
    const waiting: (() => void)[] = [];
    const later = (work: () => void) => void waiting.push(work);
    return { waiting, store: new MirroredJournalStore(disk.first, disk.second, () => undefined, later) };
  };

  test('is not waited for: what is in the first counts as written', async () => {
    await begun(1);
    const { store, waiting } = putOff();
    expect(await store.append('one', 2, noted('2'), header(2))).toBe('written');
    expect((await contents(disk.first)).get('["header","one"]')).toEqual(header(2));
    expect((await contents(disk.second)).get('["header","one"]')).toEqual(header(1));
    for (const work of waiting) work();
    await store.headers();
    expect(await contents(disk.second)).toEqual(await contents(disk.first));
  });

  test('is written at once where somebody reads', async () => {
    const { store } = putOff();
    await store.create(header());
    expect(await store.read('one')).toEqual({ header: header(), events: [] });
    expect(await contents(disk.second)).toEqual(await contents(disk.first));
  });

  test('follows in order, however late', async () => {
    await begun(0);
    const { store, waiting } = putOff();
    for (const entry of [1, 2, 3]) await store.append('one', entry, noted(String(entry)), header(entry));
    for (const work of waiting.toReversed()) work();
    await store.headers();
    expect(await contents(disk.second)).toEqual(await contents(disk.first));
  });

  test('that a page left behind is brought up when the batch is opened again', async () => {
    await begun(1);
    await putOff().store.append('one', 2, noted('2'), header(2));
    expect(await disk.store().read('one')).toEqual({ header: header(2), events: upTo(2) });
    expect(await contents(disk.second)).toEqual(await contents(disk.first));
  });

  test('does not bring back a batch that is removed meanwhile', async () => {
    const { store, waiting } = putOff();
    await store.create(header());
    const removed = store.remove('one');
    for (const work of waiting) work();
    await removed;
    expect([await contents(disk.first), await contents(disk.second)]).toEqual([new Map(), new Map()]);
  });
});
