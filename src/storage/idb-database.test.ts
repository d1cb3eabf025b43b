import { forceCloseDatabase } from 'fake-indexeddb';
import { promisifyRequest } from 'idb-keyval';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { contents, tamper, TwoDatabases } from '../../tests/story/two-databases';
import { idbDatabase } from './idb-database.browser';

afterEach(() => vi.unstubAllGlobals());

/** An IndexedDB whose every request to open is refused. */
const refusedWith = (name: string) => ({
  open: () => {
    throw new DOMException('refused', name);
  },
});

describe('a database of the browser', () => {
  test('asks for writes that are on the disk when they count as done', async () => {
    const { first } = new TwoDatabases();
    expect(await first.write(({ transaction }) => Promise.resolve(transaction.durability))).toBe('strict');
  });

  test('finds the keys under a name, and no others', async () => {
    const { first } = new TwoDatabases();
    const keys = [
      ['event', 'a', 1],
      ['event', 'a', 20],
      ['event', 'ab', 1],
      ['event', 'b', 1],
      ['header', 'a'],
    ];
    await tamper(first, (table) => keys.forEach((key) => table.put('kept', key)));
    const found = (...parts: string[]) =>
      first.read((table) => promisifyRequest(table.getAllKeys(first.under(...parts))));
    expect(await found('event', 'a')).toEqual(keys.slice(0, 2));
    expect(await found('event')).toEqual(keys.slice(0, 4));
    expect((await contents(first)).size).toBe(5);
  });

  test.each([
    ['QuotaExceededError', 'storage-full'],
    ['SecurityError', 'storage-refused'],
    ['InvalidStateError', 'storage-refused'],
    ['UnknownError', 'storage-refused'],
  ])('tells a %s as %s', async (name, code) => {
    vi.stubGlobal('indexedDB', refusedWith(name));
    await expect(contents(idbDatabase('refused'))).rejects.toThrow(
      expect.objectContaining({ name: 'ProblemError', problem: { code } }),
    );
  });

  test('tells a browser without IndexedDB as one that refuses', async () => {
    vi.stubGlobal('indexedDB', undefined);
    await expect(contents(idbDatabase('none'))).rejects.toThrow('storage-refused');
  });

  test('is asked again after it has refused', async () => {
    const factory = globalThis.indexedDB;
    vi.stubGlobal('indexedDB', refusedWith('UnknownError'));
    const first = idbDatabase('refused at first');
    await expect(contents(first)).rejects.toThrow('storage-refused');
    vi.stubGlobal('indexedDB', factory);
    expect(await contents(first)).toEqual(new Map());
  });

  test('opens before it is first used, and several side by side', () => {
    const open = vi.fn(() => ({}));
    vi.stubGlobal('indexedDB', { open });
    for (const name of ['one', 'two']) idbDatabase(name);
    expect(open.mock.calls).toEqual([['one'], ['two']]);
  });

  test('is connected anew after the browser has closed it', async () => {
    const { first } = new TwoDatabases();
    const connection = await first.read(({ transaction }) => Promise.resolve(transaction.db));
    await tamper(first, (table) => table.put('kept', 'before'));
    forceCloseDatabase(connection as never);
    await tamper(first, (table) => table.put('kept', 'after'));
    expect([...(await contents(first)).keys()]).toEqual(['"after"', '"before"']);
  });

  test('lets a bug of ours be one', async () => {
    const { first } = new TwoDatabases();
    await expect(tamper(first, (table) => table.put(() => undefined, 'a function'))).rejects.toThrow(
      expect.objectContaining({ name: 'DataCloneError' }),
    );
  });
});
