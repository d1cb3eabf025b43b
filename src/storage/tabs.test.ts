import { afterEach, describe, expect, test, vi } from 'vitest';
import { exclusively } from './exclusively.browser';
import { keepStorage } from './keep-storage.browser';
import { newId } from './new-id.browser';
import { otherTabs } from './other-tabs.browser';
import { TwoDatabases } from '../../tests/story/two-databases';

afterEach(() => vi.unstubAllGlobals());

describe('other tabs', () => {
  test('hear of a batch that changed, and the one that tells does not', async () => {
    const [here, there] = [otherTabs('a test'), otherTabs('a test')];
    const [heardHere, heardThere] = [vi.fn(), vi.fn()];
    here.listen(heardHere);
    const stop = there.listen(heardThere);
    here.tell('one');
    await vi.waitFor(() => expect(heardThere.mock.calls).toEqual([['one']]));
    stop();
    there.listen(heardHere);
    here.tell('two');
    await vi.waitFor(() => expect(heardHere.mock.calls).toEqual([['two']]));
    expect(heardThere.mock.calls).toEqual([['one']]);
    here.close();
    there.close();
  });
});

describe('work done exclusively', () => {
  test('takes the lock of its name', async () => {
    const request = vi.fn((_: string, work: () => Promise<string>) => work());
    vi.stubGlobal('navigator', { locks: { request } });
    const work = () => Promise.resolve('done');
    expect(await exclusively('batch one', work)).toBe('done');
    expect(request.mock.calls).toEqual([['batch one', work]]);
  });

  test('is simply done where there are no locks', async () => {
    vi.stubGlobal('navigator', {});
    expect(await exclusively('batch one', () => Promise.resolve('done'))).toBe('done');
  });
});

describe('asking to keep the storage', () => {
  const browser = (persisted: boolean, promises: boolean) => {
    const persist = vi.fn(() => Promise.resolve(promises));
    vi.stubGlobal('navigator', { storage: { persisted: () => Promise.resolve(persisted), persist } });
    return persist;
  };

  test.each([
    ['promised before', true, false, [true, true], 0],
    ['promised when asked', false, true, [true, false], 1],
    ['refused', false, false, [false, false], 1],
  ])('%s: never asks twice', async (_, persisted, promises, answers, asked) => {
    const { first } = new TwoDatabases();
    const persist = browser(persisted, promises);
    expect([await keepStorage(first), await keepStorage(first)]).toEqual(answers);
    expect(persist).toHaveBeenCalledTimes(asked);
  });

  test('is nothing to a browser that knows no such thing', async () => {
    vi.stubGlobal('navigator', {});
    expect(await keepStorage(new TwoDatabases().first)).toBe(false);
  });
});

test('an id is its own, and may stand in an address', () => {
  const ids = Array.from({ length: 100 }, newId);
  expect(new Set(ids).size).toBe(100);
  expect(ids.every((id) => /^[0-9a-f]{24}$/.test(id))).toBe(true);
});
