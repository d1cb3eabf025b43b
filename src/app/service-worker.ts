/// <reference lib="webworker" />
import { TAKE_OVER } from './take-over';

/** A file of this version, as the build lists it. One whose name holds its own hash has no revision. */
type Listed = { url: string; revision: string | null };
declare const self: ServiceWorkerGlobalScope & { readonly __WB_MANIFEST: readonly Listed[] };

const { scope } = self.registration;
/** By the scope, since two copies of the app at two paths of one host share their storage. */
const CACHE = `fallbright ${scope}`;
const SHELL = new URL('index.html', scope).href;

/** Where each file is kept. Two versions of one file lie side by side, so the old one lacks nothing until it is left. */
const keys = new Map(
  self.__WB_MANIFEST.map(({ url, revision }) => {
    const { href } = new URL(url, scope);
    return [href, revision === null ? href : `${href}?${revision}`] as const;
  }),
);

self.addEventListener('install', (event) => event.waitUntil(keepAll()));
self.addEventListener('activate', (event) => event.waitUntil(begin()));
self.addEventListener('message', (event) => {
  if (event.data === TAKE_OVER) event.waitUntil(self.skipWaiting());
});
self.addEventListener('fetch', (event) => {
  const key = keyFor(event.request);
  if (key !== undefined) event.respondWith(answer(key, event.request));
});

/** Only files of ours, and the app's own address: at a longer path another copy of it may live. */
function keyFor({ method, url }: Request): string | undefined {
  if (method !== 'GET') return undefined;
  const { origin, pathname } = new URL(url);
  const address = origin + pathname;
  return keys.get(address === scope ? SHELL : address);
}

async function answer(key: string, request: Request): Promise<Response> {
  const cache = await caches.open(CACHE);
  return (await cache.match(key, { ignoreVary: true })) ?? fetch(request);
}

/** All or nothing: a version of which one file does not come is not installed, and the last one goes on. */
async function keepAll(): Promise<void> {
  const cache = await caches.open(CACHE);
  const keep = async ([address, key]: readonly [string, string]) => {
    if (!(await cache.match(key, { ignoreVary: true }))) await cache.put(key, await load(address, key));
  };
  await Promise.all([...keys].map(keep));
}

async function load(address: string, key: string): Promise<Response> {
  const response = await fetch(address, { cache: key === address ? 'default' : 'reload' });
  if (!response.ok) throw new Error(`${address} answered ${String(response.status)}`);
  // A page is never opened from a response that was redirected, as some hosts do with index.html.
  return response.redirected ? new Response(response.body, { headers: response.headers }) : response;
}

/** Lets go of the files of versions before this one, and serves the page that it was installed from. */
async function begin(): Promise<void> {
  const cache = await caches.open(CACHE);
  const current = new Set(keys.values());
  const old = (await cache.keys()).filter(({ url }) => !current.has(url));
  await Promise.all(old.map((file) => cache.delete(file)));
  await self.clients.claim();
}
