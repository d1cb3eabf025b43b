import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { ROOT } from './run.mjs';

const dist = join(ROOT, 'dist');
const page = readFileSync(join(dist, 'index.html'), 'utf8');
const files = [...page.matchAll(/(?:src|href)="\.\/([^"]+\.(?:js|css))"/g)].map(([, file = '']) => file);
const sizes = files.map((file) => ({
  file,
  bytes: gzipSync(readFileSync(join(dist, file)), { level: 9 }).length,
}));

for (const { file, bytes } of sizes) console.log(`${(bytes / 1024).toFixed(1).padStart(7)} KiB  ${file}`);
const total = sizes.reduce((sum, { bytes }) => sum + bytes, 0);
console.log(`${(total / 1024).toFixed(1).padStart(7)} KiB  scripts and styles of the first load, gzip`);
