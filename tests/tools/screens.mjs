import './node-version.mjs';
import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { ensureBrowser } from './browser.mjs';
import { installPackages } from './install.mjs';
import { ROOT, runModule } from './run.mjs';

/**
 * Leads every kit through the real screens, goes to every other screen, and leaves a picture of each, by day and by night. With
 * `--readme` only those of the README and the manifest are taken anew, into public/pictures.
 */
const isForReadme = process.argv.includes('--readme');
const FOLDER = join(ROOT, isForReadme ? 'public/pictures' : 'test-results/screens');

if (!(await installPackages())) process.exit(1);
const { ok, output } = await runModule('vite/bin/vite.js', ['build'], { quiet: true });
if (!ok) console.error(output);
if (!ok || !(await ensureBrowser())) process.exit(1);
if (!isForReadme) rmSync(FOLDER, { recursive: true, force: true });
const walked = await runModule(
  '@playwright/test/cli.js',
  [
    'test',
    '--config',
    'tests/playwright.config.ts',
    ...(isForReadme ? ['nightly/readme-pictures'] : ['every-kit-by-hand', 'every-other-screen']),
  ],
  { env: { NIGHTLY: '1', [isForReadme ? 'README_PICTURES' : 'SCREENS']: FOLDER }, minutes: 60 },
);
console.log(`The pictures are in ${FOLDER}`);
process.exitCode = walked.ok ? 0 : 1;
