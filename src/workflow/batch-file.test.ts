import { beforeEach, describe, expect, test } from 'vitest';
import { Maker } from '../../tests/story/maker';
import { MemoryJournalStore } from '../../tests/story/memory-journal-store';
import { batch, BEGUN, Device, sheet, sure, whole } from '../../tests/story/tabs';
import { hoursAfter } from '../domain/calendar';
import { ProblemError } from '../domain/problem';
import type { Instant } from '../domain/unit';
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

describe('a batch file', () => {
  test('holds the whole batch', async () => {
    device.now = BEGUN;
    const journal = sure(await Journal.begin(device.tab(store), batch()));
    await device.relive(journal, maker.journal);
    const { header, events } = journal;
    expect(sure(readBatchFile(writeBatchFile(header, events)))).toEqual({ header, events });
  });

  test('is the same text for the same batch, whatever the order of its keys', () => {
    const turned = maker.journal.map((event) => Object.fromEntries(Object.entries(event).toReversed()));
    expect(writeBatchFile(identity, turned as unknown as BatchEvent[])).toBe(file);
  });

  test('begins with what it is', () =>
    expect(Object.keys(JSON.parse(file) as object)).toEqual(
      'format version id name begun freeHour sheet events'.split(' '),
    ));
});

describe('a file that cannot be used is refused in one sentence', () => {
  const changed = (change: (batch: Record<string, never>) => void): string => {
    const copy = JSON.parse(file) as Record<string, never>;
    change(copy);
    return JSON.stringify(copy);
  };
  const withEvents = (change: (events: BatchEvent[]) => void): string =>
    changed(({ events }) => change(events as unknown as BatchEvent[]));

  test.each([
    ['cut off', file.slice(0, 900), { code: 'not-json' }],
    ['empty', '', { code: 'not-json' }],
    ['a kit sheet', JSON.stringify(sheet), { code: 'not-a-batch-file' }],
    ['something else', '[1, 2]', { code: 'not-a-batch-file' }],
    ['newer', changed((it) => Object.assign(it, { version: 2 })), { code: 'newer-format', version: 2 }],
    [
      'without a name',
      changed((it) => delete it['name']),
      { code: 'batch-file-damaged', path: 'name', given: 'nothing' },
    ],
    [
      'with a key of someone else’s',
      changed((it) => Object.assign(it, { colour: 'red' })),
      { code: 'batch-file-damaged', path: 'colour', given: '"colour"' },
    ],
    [
      'with an impossible gravity',
      withEvents((events) => {
        events.push({ ...noted('x'), type: 'reading taken', reading: 900 } as never);
      }),
      { code: 'batch-file-damaged', path: `events.${String(maker.journal.length)}.reading`, given: '900' },
    ],
    [
      'with a sheet that puts sorbate before the gate',
      changed((it) =>
        Object.assign(it['sheet']!, {
          sachets: sheet.sachets.map((one) =>
            one.contents.includes('sorbate') ? { ...one, when: 'mix' } : one,
          ),
        }),
      ),
      expect.objectContaining({ code: 'sheet-refused' }) as unknown,
    ],
    [
      'with an event twice',
      withEvents((events) => events.splice(1, 0, events[0]!)),
      {
        code: 'journal-mismatch',
        entry: 2,
        type: 'sachets accounted',
        reason: { code: 'already-done' },
      },
    ],
    [
      'with a gate passed where none stands',
      withEvents((events) => {
        const passed = {
          type: 'gate passed',
          how: 'touch',
          gate: 'proving dry',
          rules: 1,
          readings: [],
        } as const;
        events.push({ ...passed, ...maker.now });
      }),
      {
        code: 'journal-mismatch',
        entry: maker.journal.length + 1,
        type: 'gate passed',
        reason: { code: 'not-this-act' },
      },
    ],
  ])('%s', async (_, text, problem) => {
    expect(await takeIn(text)).toEqual({ ok: false, problem });
    expect(await store.headers()).toEqual([]);
  });

  test('from the future', async () => {
    device.now = { at: (maker.now.at - 25 * 3_600_000) as Instant, offsetMinutes: 120 };
    expect(await takeIn(file)).toEqual({
      ok: false,
      problem: { code: 'in-the-future', takenAt: maker.now.at },
    });
  });

  test('while the device is full', async () => {
    store.before = () => Promise.reject(new ProblemError({ code: 'storage-full' }));
    expect(await takeIn(file)).toEqual({ ok: false, problem: { code: 'storage-full' } });
  });
});

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
    expect(journal.events.at(-1)?.at).toBeLessThan(hoursAfter(maker.now.at, 1));
  });
});
