import { createHash } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { FetchBroken, keptPack, type Shelf } from './kept-pack';

const PACK = new Uint8Array(1000).map((_, at) => at * 7);
const sha256 = (bytes: Uint8Array) => Promise.resolve(createHash('sha256').update(bytes).digest('hex'));
const ADDRESS = 'https://host.example/ear/ear.pack';
const wanted = { address: ADDRESS, bytes: PACK.length, sha256: await sha256(PACK) };

/** A cache in memory, keyed as the real one is. */
function memoryCache() {
  const kept = new Map<string, Uint8Array<ArrayBuffer>>();
  const cache = {
    match: (key: string) => Promise.resolve(kept.has(key) ? new Response(kept.get(key) ?? null) : undefined),
    put: async (key: string, response: Response) =>
      void kept.set(key, new Uint8Array(await response.arrayBuffer())),
    delete: ({ url }: Request) => Promise.resolve(kept.delete(url)),
    keys: () => Promise.resolve([...kept.keys()].map((url) => new Request(url))),
  } as unknown as Cache;
  return { kept, cache };
}

function setUp(answer: () => Response = () => new Response(PACK)) {
  const { kept, cache } = memoryCache();
  const asked: string[] = [];
  const progress: number[] = [];
  const shelf: Shelf = {
    fetch: (address) => {
      asked.push(address);
      return Promise.resolve(answer());
    },
    cache: () => Promise.resolve(cache),
    sha256,
  };
  const get = (with_: Partial<Shelf> = {}) =>
    keptPack(wanted, { ...shelf, ...with_ }, (done, total) => progress.push(done / total));
  return { get, kept, asked, progress };
}

/** Half of it, and then the line breaks. */
const brokenOff = () =>
  new Response(
    new ReadableStream({
      pull(controller) {
        controller.enqueue(PACK.slice(0, 500));
        controller.error(new Error('the line broke'));
      },
    }),
  );

describe('the pack', () => {
  test('is fetched once, and told how far it is', async () => {
    const { get, asked, progress } = setUp();
    expect(await get()).toEqual(PACK);
    expect(await get()).toEqual(PACK);
    expect(asked).toEqual([ADDRESS]);
    expect([progress[0], progress.at(-1)]).toEqual([0, 1]);
  });

  test('takes the place of one of a version before', async () => {
    const { get, kept } = setUp();
    kept.set(`${ADDRESS}?before`, new Uint8Array());
    kept.set('https://host.example/other?1', new Uint8Array());
    await get();
    expect([...kept.keys()]).toEqual(['https://host.example/other?1', `${ADDRESS}?${wanted.sha256}`]);
  });

  test('is fetched anew where what was kept is damaged', async () => {
    const { get, kept, asked } = setUp();
    kept.set(`${ADDRESS}?${wanted.sha256}`, PACK.toReversed());
    expect(await get()).toEqual(PACK);
    expect(asked).toHaveLength(1);
  });

  test('is heard with all the same where nothing can be kept', async () => {
    const { get } = setUp();
    expect(await get({ cache: () => Promise.reject(new Error('no storage')) })).toEqual(PACK);
    expect(await get({ cache: () => Promise.resolve(undefined) })).toEqual(PACK);
  });
});

describe('a fetch is broken, and nothing is kept of it,', () => {
  test.each<[what: string, answer: () => Response]>([
    ['when the line breaks half-way', brokenOff],
    ['when the host has none', () => new Response('Not found', { status: 404 })],
    ['when it comes short', () => new Response(PACK.slice(0, 999))],
    ['when it is another one', () => new Response(PACK.toReversed())],
  ])('%s; the next try may do', async (_, answer) => {
    let first = true;
    const { get, kept } = setUp(() => {
      const given = first ? answer() : new Response(PACK);
      first = false;
      return given;
    });
    await expect(get()).rejects.toThrow(FetchBroken);
    expect(kept.size).toBe(0);
    expect(await get()).toEqual(PACK);
  });
});
