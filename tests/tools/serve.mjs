import { createReadStream, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { createGzip } from 'node:zlib';

/** @type {Record<string, string>} */
const TYPES = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.jpg': 'image/jpeg',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.map': 'application/json; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain; charset=utf-8',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.webp': 'image/webp',
  '.woff2': 'font/woff2',
};

/** What a host packs on the way; fonts and pictures are packed already. */
const PACKED = /^(text|application\/(json|manifest)|image\/svg)/;

/** Both names of this machine, since "localhost" is the one or the other; never the network. */
const LOOPBACK = ['127.0.0.1', '::1'];

/**
 * The file that an address names, if it lies in the folder: no listing, no fallback for unknown addresses.
 * @param {string} folder
 * @param {string} path
 */
function fileAt(folder, path) {
  try {
    const file = resolve(join(folder, decodeURIComponent(path), path.endsWith('/') ? 'index.html' : ''));
    return file.startsWith(resolve(folder) + sep) && statSync(file).isFile() ? file : undefined;
  } catch {
    return undefined;
  }
}

/**
 * Answers as a plain static host does.
 * @param {string} folder
 * @param {readonly string[]} bases
 * @returns {import('node:http').RequestListener}
 */
const answer = (folder, bases) => (request, response) => {
  const { pathname } = new URL(request.url ?? '/', 'http://localhost');
  const base = bases.find((candidate) => pathname.startsWith(candidate));
  const file = base && fileAt(folder, pathname.slice(base.length - 1));
  if (!file) {
    response.writeHead(404, { 'content-type': 'text/plain' }).end('Not found\n');
    return;
  }
  const type = TYPES[extname(file)] ?? 'application/octet-stream';
  const zips = PACKED.test(type) && /\bgzip\b/.test(String(request.headers['accept-encoding']));
  response.writeHead(200, {
    'content-type': type,
    'cache-control': 'no-cache',
    vary: 'accept-encoding',
    'x-content-type-options': 'nosniff',
    ...(zips ? { 'content-encoding': 'gzip' } : {}),
  });
  if (request.method === 'HEAD') response.end();
  else if (zips) createReadStream(file).pipe(createGzip()).pipe(response);
  else createReadStream(file).pipe(response);
};

/**
 * @param {import('node:http').Server} server
 * @param {number} port
 * @param {string} host
 * @returns {Promise<void>}
 */
const listen = (server, port, host) =>
  new Promise((resolve, reject) => {
    server.once('error', reject).listen(port, host, resolve);
  });

/**
 * Serves a folder on this machine only, under one or more paths.
 * @param {string} folder
 * @param {number} port 0: any free one
 * @param {readonly string[]} bases each with a slash at both ends; the longest first
 */
export async function serve(folder, port, bases = ['/']) {
  let chosen = port;
  for (const host of LOOPBACK) {
    const server = createServer(answer(folder, bases));
    try {
      await listen(server, chosen, host);
    } catch (error) {
      const { code } = /** @type {NodeJS.ErrnoException} */ (error);
      if (host === '::1' && code !== 'EADDRINUSE') continue;
      throw error;
    }
    const address = server.address();
    if (address && typeof address === 'object') chosen = address.port;
  }
  return chosen;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const [folder = 'dist', ...bases] = process.argv.slice(2);
  console.log(`Serving on port ${await serve(folder, 0, bases.length > 0 ? bases : undefined)}`);
}
