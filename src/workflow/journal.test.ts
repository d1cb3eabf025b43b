import { beforeEach, describe, expect, test, vi } from 'vitest';
import { Maker } from '../../tests/story/maker';
import { MemoryJournalStore } from '../../tests/story/memory-journal-store';
import { asTold, batch, BEGUN, Device, sheet, sure, whole } from '../../tests/story/tabs';
import { hoursAfter } from '../domain/calendar';
import { ProblemError } from '../domain/problem';
import { RULES } from '../domain/gates/passing';
import type { Instant } from '../domain/unit';
import type { BatchEvent } from './batch-event';
import { Journal, type Told } from './journal';

const laidOut: Told = { type: 'sachets accounted', how: 'touch', act: 'lay out sachets 1', missing: [] };
const noted = (text: string): Told => ({ type: 'noted', how: 'touch', text });
const stamped = (told: Told, at: Instant = BEGUN.at) => ({ ...told, at, offsetMinutes: 120 }) as BatchEvent;

let device: Device;
let store: MemoryJournalStore;
let journal: Journal;

beforeEach(async () => {
  device = new Device();
  store = new MemoryJournalStore();
  journal = sure(await Journal.begin(device.tab(store), batch()));
});

describe('a journal', () => {
  test('begins a batch that is already kept', async () => {
    expect(whole(sure(await Journal.open(device.tab(store), 'one')))).toEqual(whole(journal));
    expect(journal.header).toEqual({
      ...{
        format: 'fallbright batch',
        version: 1,
        id: 'one',
        name: 'Batch one',
        begun: BEGUN,
        freeHour: 18,
        sheet,
      },
      ...{ entries: 0, place: 'prepare', next: { act: 'lay out sachets 1', step: 'lay out sachets' } },
    });
  });

  test.each([
    ['no name', { name: '  ' }, { path: 'name', given: '""' }],
    ['an hour that no clock has', { freeHour: 24 }, { path: 'freeHour', given: '24' }],
  ])('does not begin with %s', async (_, wrong, fault) =>
    expect(await Journal.begin(device.tab(store), { ...batch('two'), ...wrong })).toEqual({
      ok: false,
      problem: { code: 'report-misread', ...fault },
    }),
  );

  test('never begins over another', async () =>
    expect(await Journal.begin(device.tab(store), batch())).toEqual({
      ok: false,
      problem: { code: 'written-elsewhere' },
    }));

  test('counts once what is said twice', async () => {
    expect(await Promise.all([journal.report(laidOut), journal.report(laidOut)])).toEqual([
      undefined,
      { code: 'already-done' },
    ]);
    expect(journal.events).toEqual([stamped(laidOut)]);
  });

  test('keeps what is reported in a hurry in its order', async () => {
    await Promise.all(['a', 'b', 'c', 'd'].map((text) => journal.report(noted(text))));
    expect(journal.events).toEqual(['a', 'b', 'c', 'd'].map((text) => stamped(noted(text))));
    expect(await store.read('one')).toEqual({ header: journal.header, events: journal.events });
  });

  test('never goes back in time with the clock', async () => {
    device.now = { at: hoursAfter(BEGUN.at, 5), offsetMinutes: 120 };
    await journal.report(noted('late'));
    device.now = { at: hoursAfter(BEGUN.at, 2), offsetMinutes: 60 };
    await journal.report(noted('the clock was put back'));
    expect(journal.events.map(({ at, offsetMinutes }) => ({ at, offsetMinutes }))).toEqual([
      { at: hoursAfter(BEGUN.at, 5), offsetMinutes: 120 },
      { at: hoursAfter(BEGUN.at, 5), offsetMinutes: 60 },
    ]);
  });

  test('refuses what could not be read back, and says where', async () => {
    const before = whole(journal);
    expect(await journal.report(noted(' '))).toEqual({ code: 'report-misread', path: 'text', given: '""' });
    expect(whole(journal)).toEqual(before);
  });

  test('fills in the rules and the readings that a gate was passed on', async () => {
    const maker = new Maker(sheet).goTo('rack');
    await device.relive(journal, maker.journal);
    const passed = journal.events.filter((event) => event.type === 'gate passed');
    const taken = journal.events.flatMap(({ type }, index) => (type === 'reading taken' ? [index + 1] : []));
    expect(passed.map(({ gate, rules, readings }) => ({ gate, rules, readings }))).toEqual([
      { gate: 'proving mixed', rules: RULES, readings: taken.slice(0, 1) },
      { gate: 'proving dry', rules: RULES, readings: taken.slice(-2) },
    ]);
  });
});

describe('what is published', () => {
  test('is on the disk first', async () => {
    const reached = vi.fn();
    let letGo = (): void => undefined;
    store.before = () => {
      reached();
      return new Promise((resolve) => (letGo = resolve));
    };
    const heard = vi.fn();
    journal.subscribe(heard);
    const before = whole(journal);
    const reported = journal.report(laidOut);
    await vi.waitFor(() => expect(reached).toHaveBeenCalledOnce());
    expect({ now: whole(journal), heard: heard.mock.calls }).toEqual({ now: before, heard: [] });
    letGo();
    await reported;
    expect({ events: journal.events, heard: heard.mock.calls.length }).toEqual({
      events: [stamped(laidOut)],
      heard: 1,
    });
  });

  test('is heard by those who listen, until they stop', async () => {
    const seen: number[] = [];
    const stop = journal.subscribe(() => seen.push(journal.header.entries));
    await journal.report(noted('a'));
    stop();
    await journal.report(noted('b'));
    expect(seen).toEqual([1]);
  });

  test.each(['storage-full', 'storage-refused'] as const)(
    'stays as it was when the device says %s',
    async (code) => {
      store.before = () => Promise.reject(new ProblemError({ code }));
      const before = whole(journal);
      expect(await journal.report(laidOut)).toEqual({ code });
      expect(whole(journal)).toEqual(before);
      store.before = () => Promise.resolve();
      expect(await journal.report(laidOut)).toBeUndefined();
      expect(journal.events).toEqual([stamped(laidOut)]);
    },
  );

  test('stays as it was after a bug, and the next report is taken', async () => {
    store.before = () => Promise.reject(new RangeError('a bug'));
    await expect(journal.report(laidOut)).rejects.toThrow('a bug');
    store.before = () => Promise.resolve();
    expect(await journal.report(laidOut)).toBeUndefined();
  });
});

describe('a journal that cannot be read to its end', () => {
  const gap = { code: 'journal-gap', entry: 3 } as const;
  const twice = {
    code: 'journal-mismatch',
    entry: 2,
    type: 'sachets accounted',
    reason: { code: 'already-done' },
  } as const;
  const kept = [stamped(laidOut), stamped(laidOut), stamped(noted('after'))];

  test.each([
    ['an event that does not follow', { events: kept }, twice, 1],
    ['an event that is not there', { events: [kept[0]!, kept[2]!], problem: gap }, gap, 2],
    ['both: the earlier one is told', { events: kept, problem: gap }, twice, 1],
  ])('opens as far as it goes: %s', async (_, stored, mismatch, entries) => {
    store.batches.set('one', { header: journal.header, ...stored });
    const opened = sure(await Journal.open(device.tab(store), 'one'));
    expect({ mismatch: opened.mismatch, events: opened.events, entries: opened.header.entries }).toEqual({
      mismatch,
      events: stored.events.slice(0, entries),
      entries,
    });
    expect(await opened.report(noted('more'))).toEqual(mismatch);
    expect(store.batches.get('one')?.events).toEqual(stored.events);
  });

  test('is no batch where there is none', async () =>
    expect(await Journal.open(device.tab(store), 'two')).toEqual({
      ok: false,
      problem: { code: 'no-such-batch' },
    }));
});

test('the header of a batch says what it waits for', async () => {
  const waits: unknown[] = [];
  const maker = new Maker(sheet).goTo('finished');
  journal.subscribe(() => waits.push(journal.header.next ?? { ended: journal.header.endedAt }));
  await device.relive(journal, maker.journal);
  const due = waits.filter((wait) => JSON.stringify(wait).includes('due'));
  expect(waits.at(-1)).toEqual({ ended: maker.now.at });
  expect(due).toContainEqual(expect.objectContaining({ step: 'read towards dry' }));
  expect(due).toContainEqual(expect.objectContaining({ gate: 'proving still' }));
  expect(asTold(maker.journal[0]!)).toEqual(laidOut);
});
