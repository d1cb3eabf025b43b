/** What is fetched, where from, and what it must be. */
export type Wanted = { address: string; bytes: number; sha256: string };

/** The world as far as it is needed: the network, and what is kept of it where the browser keeps anything. */
export type Shelf = {
  fetch: (address: string) => Promise<Response>;
  cache: () => Promise<Pick<Cache, 'match' | 'put' | 'delete' | 'keys'> | undefined>;
  sha256: (bytes: Uint8Array<ArrayBuffer>) => Promise<string>;
};
type Progress = (done: number, total: number) => void;

/** It did not come, or not whole. Another try may do. */
export class FetchBroken extends Error {
  override name = 'FetchBroken';
}

/** The pack, from what is kept; else it is fetched, proved, and kept, so that it is fetched once. */
export async function keptPack(
  wanted: Wanted,
  shelf: Shelf,
  progress: Progress,
): Promise<Uint8Array<ArrayBuffer>> {
  const cache = await shelf.cache().catch(() => undefined);
  const key = `${wanted.address}?${wanted.sha256}`;
  const kept = await cache?.match(key);
  if (kept) {
    const bytes = new Uint8Array(await kept.arrayBuffer());
    if (await isWhole(bytes, wanted, shelf)) return bytes;
  }
  const bytes = await fetched(wanted, shelf, progress);
  if (!(await isWhole(bytes, wanted, shelf)))
    throw new FetchBroken(`${wanted.address} is not what was asked for`);
  await keep(cache, key, wanted.address, bytes).catch(() => undefined);
  return bytes;
}

async function fetched({ address, bytes: total }: Wanted, shelf: Shelf, progress: Progress) {
  try {
    const response = await shelf.fetch(address);
    if (!response.ok || !response.body) throw new Error(`it answered ${response.status}`);
    const chunks: Uint8Array[] = [];
    let done = 0;
    progress(done, total);
    for (const reader = response.body.getReader(); ;) {
      const { value } = await reader.read();
      if (!value) break;
      chunks.push(value);
      done += value.length;
      progress(done, total);
    }
    return new Uint8Array(await new Blob(chunks as BlobPart[]).arrayBuffer());
  } catch (cause) {
    throw new FetchBroken(`${address} did not come: ${String(cause)}`, { cause });
  }
}

async function isWhole(bytes: Uint8Array<ArrayBuffer>, wanted: Wanted, shelf: Shelf): Promise<boolean> {
  return bytes.length === wanted.bytes && (await shelf.sha256(bytes)) === wanted.sha256;
}

/** Keeps it in the place of those of versions before. A full disk is no reason not to listen now. */
async function keep(
  cache: Awaited<ReturnType<Shelf['cache']>>,
  key: string,
  address: string,
  bytes: Uint8Array<ArrayBuffer>,
): Promise<void> {
  if (!cache) return;
  const old = (await cache.keys()).filter(({ url }) => url.startsWith(`${address}?`));
  await Promise.all(old.map((request) => cache.delete(request)));
  await cache.put(key, new Response(bytes));
}
