import { beforeEach, describe, expect, test } from 'vitest';
import { Maker } from '../../tests/story/maker';
import { MemoryJournalStore } from '../../tests/story/memory-journal-store';
import { batch, BEGUN, Device, sheet, sure } from '../../tests/story/tabs';
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
        const passed = { type: 'gate passed', how: 'touch', gate: 'proving dry', rules: 1 } as const;
        events.push({ ...passed, readings: [] as number[], ...maker.now });
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
