import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { ROOT } from './run.mjs';

/** What the way to the first act of a batch fetches beside the first load, each with all that it takes. */
const ON_THE_WAY = ['StartRoute', 'journal', 'en-bench', 'hands-free.browser', 'BatchRoute'];

const dist = join(ROOT, 'dist');
const page = readFileSync(join(dist, 'index.html'), 'utf8');
const firstLoad = [...page.matchAll(/(?:src|href)="\.\/([^"]+\.(?:js|css))"/g)].map(([, file = '']) => file);
const built = readdirSync(join(dist, 'assets')).map((name) => `assets/${name}`);

/** @param {string} file */
const partOf = (file) => file.replace(/-[\w-]{8}\.\w+$/, '');

/** A script that it imports as it is loaded, and the style sheet that was made of the same part. @param {string} file */
function takenIn(file) {
  if (!file.endsWith('.js')) return [];
  const text = readFileSync(join(dist, file), 'utf8');
  const scripts = [...text.matchAll(/(?:from|import)\s*["']\.\/([^"']+\.js)["']/g)].map(
    ([, name = '']) => `assets/${name}`,
  );
  return [...scripts, ...built.filter((each) => each.endsWith('.css') && partOf(each) === partOf(file))];
}

/** @param {readonly string[]} files */
function loadedWith(files) {
  const loaded = new Set(files);
  for (const file of loaded) for (const each of takenIn(file)) loaded.add(each);
  return [...loaded];
}

/**
 * @param {readonly string[]} files
 * @param {string} what
 */
function tell(files, what) {
  const sizes = files
    .map((file) => ({ file, bytes: gzipSync(readFileSync(join(dist, file)), { level: 9 }).length }))
    .toSorted((a, b) => b.bytes - a.bytes);
  for (const { file, bytes } of sizes) console.log(`${(bytes / 1024).toFixed(1).padStart(7)} KiB  ${file}`);
  const total = sizes.reduce((sum, { bytes }) => sum + bytes, 0);
  console.log(`${(total / 1024).toFixed(1).padStart(7)} KiB  ${what}, gzip\n`);
}

const way = built.filter(
  (file) => file.endsWith('.js') && ON_THE_WAY.some((part) => partOf(file) === `assets/${part}`),
);
for (const part of ON_THE_WAY)
  if (!way.some((file) => partOf(file) === `assets/${part}`)) throw new Error(`nothing was built of ${part}`);
tell(firstLoad, 'scripts and styles of the first load');
tell(loadedWith([...firstLoad, ...way]), 'scripts and styles until the first act of a batch');
