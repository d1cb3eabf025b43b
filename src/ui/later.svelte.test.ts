import { describe, expect, test, vi } from 'vitest';
import { Later } from './later.svelte';

describe('what is fetched later', () => {
  test('is nothing until it has come, and is fetched once', async () => {
    const fetch = vi.fn(() => Promise.resolve('a page'));
    const later = new Later(fetch);
    expect(later.now).toBeUndefined();
    expect(await Promise.all([later.bring(), later.bring()])).toEqual(['a page', 'a page']);
    expect(await later.bring()).toBe('a page');
    expect(later.now).toBe('a page');
    expect(fetch).toHaveBeenCalledTimes(1);
  });

  test('says that it did not come, and is asked for again', async () => {
    const fetch = vi.fn<() => Promise<string>>().mockRejectedValueOnce(new Error('no network'));
    fetch.mockResolvedValueOnce('a page');
    const later = new Later(fetch);
    await expect(later.bring()).rejects.toThrow('no network');
    expect(later.failed).toBe(true);
    expect(later.now).toBeUndefined();
    expect(await later.bring()).toBe('a page');
    expect(later.failed).toBe(false);
  });
});
