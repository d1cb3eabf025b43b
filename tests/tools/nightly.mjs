import './node-version.mjs';
import { ensureBrowser } from './browser.mjs';
import { installPackages } from './install.mjs';
import { installSpeakers } from '../voice/corpus/install-speakers.mjs';
import { run, runModule } from './run.mjs';

/** The long runs: properties with many more cases, tests/nightly, every kit by hand, every other screen, and a batch by voice in a browser, and then every rule broken once. */
if (!(await installPackages())) process.exit(1);
const { ok } = await runModule(
  'vitest/vitest.mjs',
  [
    'run',
    'src',
    'tests/nightly',
    'tests/sealed-acts.test.ts',
    'tests/mishaps-keep-the-seals.test.ts',
    'tests/journal-on-disk.test.ts',
  ],
  {
    env: { NIGHTLY: '1' },
    minutes: 240,
  },
);
const built = await runModule('vite/bin/vite.js', ['build'], { quiet: true });
// A phrase for which nobody keeps a clip is rendered as it is needed.
const inBrowser =
  built.ok &&
  (await ensureBrowser()) &&
  (await installSpeakers()) &&
  (
    await runModule(
      '@playwright/test/cli.js',
      ['test', '--config', 'tests/playwright.config.ts', 'tests/browser/nightly'],
      { env: { NIGHTLY: '1' }, minutes: 120 },
    )
  ).ok;
const mutants = await run(process.execPath, ['tests/nightly/mutants.mjs'], { minutes: 120 });
process.exitCode = ok && inBrowser && mutants.ok ? 0 : 1;
