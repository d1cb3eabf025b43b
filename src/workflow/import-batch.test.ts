import { beforeEach, describe, expect, test } from 'vitest';
import { Maker } from '../../tests/story/maker';
import { MemoryJournalStore } from '../../tests/story/memory-journal-store';
import { batch, BEGUN, Device, sheet, sure, whole } from '../../tests/story/tabs';
import type { BatchEvent } from './batch-event';
import { readBatchFile, writeBatchFile } from './batch-file';
import { importBatch } from './import-batch';
import { Journal } from './journal';

const maker = new Maker(sheet).goTo('mix');
const identity = { ...batch(), begun: BEGUN };
const file = writeBatchFile(identity, maker.journal);
const noted = (text: string): BatchEvent => ({ type: 'noted', how: 'touch', text, ...maker.now });

let device: Device;
let store: MemoryJournalStore;

beforeEach(() => {
  device = new Device();
  device.now = maker.now;
  store = new MemoryJournalStore();
});

const takeIn = (text: string) => importBatch(device.tab(store), text);
const opened = async (id = 'one') => sure(await Journal.open(device.tab(store), id));

describe('taking a file in', () => {
  const longer = writeBatchFile(identity, [...maker.journal, noted('a'), noted('b')]);

  test('brings back a batch that is gone', async () => {
    device.now = BEGUN;
    const journal = sure(await Journal.begin(device.tab(store), batch()));
    await device.relive(journal, maker.journal);
    const before = whole(journal);
    await store.remove('one');
    expect(await takeIn(writeBatchFile(journal.header, journal.events))).toEqual({
      ok: true,
      value: { id: 'one', outcome: 'new' },
    });
    expect(whole(await opened())).toEqual(before);
  });

  test.each([
    ['the same', file, file, { id: 'one', outcome: 'same' }, maker.journal.length],
    ['a longer one', file, longer, { id: 'one', outcome: 'longer in file' }, maker.journal.length + 2],
    ['a shorter one', longer, file, { id: 'one', outcome: 'longer here' }, maker.journal.length + 2],
  ])('over a batch that is here: %s', async (_, first, second, value, entries) => {
    await takeIn(first);
    expect(await takeIn(second)).toEqual({ ok: true, value });
    const journal = await opened();
    expect({ entries: journal.header.entries, mismatch: journal.mismatch }).toEqual({
      entries,
      mismatch: undefined,
    });
    expect(journal.header).toEqual(
      sure(readBatchFile(entries > maker.journal.length ? longer : file)).header,
    );
  });

  test('a batch renamed since is the same batch', async () => {
    await takeIn(file);
    expect(await takeIn(writeBatchFile({ ...identity, name: 'Another name' }, maker.journal))).toEqual({
      ok: true,
      value: { id: 'one', outcome: 'same' },
    });
  });

  test.each([
    ['events', { ...identity }, [...maker.journal, noted('c')]],
    ['beginning', { ...identity, freeHour: 9 }, maker.journal],
  ])('with other %s is kept beside it', async (_, other, events) => {
    await takeIn(longer);
    const here = await store.read('one');
    expect(await takeIn(writeBatchFile(other, events))).toEqual({
      ok: true,
      value: { id: 'copy-1', outcome: 'copy' },
    });
    expect({ here: await store.read('one'), copy: (await store.read('copy-1'))?.events }).toEqual({
      here,
      copy: events,
    });
  });

  test('never goes on with a batch that has a gap here', async () => {
    await takeIn(file);
    const { header, events } = (await store.read('one'))!;
    store.batches.set('one', {
      header,
      events: events.slice(0, 2),
      problem: { code: 'journal-gap', entry: 3 },
    });
    expect(await takeIn(file)).toEqual({ ok: true, value: { id: 'copy-1', outcome: 'copy' } });
  });

  test('shows at once where the batch is open', async () => {
    await takeIn(file);
    const journal = await opened();
    await takeIn(longer);
    await journal.refresh();
    expect(journal.header.entries).toBe(maker.journal.length + 2);
    expect(journal.events.at(-1)).toEqual(noted('b'));
  });
});
