import './node-version.mjs';
import { loadavg } from 'node:os';
import { join } from 'node:path';
import { ensureBrowser } from './browser.mjs';
import { installPackages } from './install.mjs';
import { ROOT, runModule } from './run.mjs';
import { serve } from './serve.mjs';

/** How the app feels, in figures. None of them passes or fails: they are to be compared, on a machine at rest. */
const TIMES = 3;

if (!(await installPackages())) process.exit(1);
const { ok, output } = await runModule('vite/bin/vite.js', ['build'], { quiet: true });
if (!ok) console.error(output);
if (!ok || !(await ensureBrowser())) process.exit(1);

console.log('What is fetched');
await import('./size.mjs');

const { lighthouseOf } = await import('./lighthouse.mjs');
const port = await serve(join(ROOT, 'dist'), 0);
for (let time = 1; time <= TIMES; time += 1) {
  console.log(`\nLighthouse, as on a phone, ${time} of ${TIMES}, load ${(loadavg()[0] ?? 0).toFixed(1)}`);
  for (const line of await lighthouseOf(`http://localhost:${port}/`)) console.log(`  ${line}`);
}

console.log('\nFrom act to act');
const measured = await runModule(
  '@playwright/test/cli.js',
  ['test', '--config', 'tests/playwright.config.ts', '--workers=1', 'nightly/figures'],
  { env: { NIGHTLY: '1' }, minutes: 20 },
);
process.exit(measured.ok ? 0 : 1);
