import './node-version.mjs';
import { ensureBrowser } from './browser.mjs';
import { installPackages } from './install.mjs';
import { run, runModule } from './run.mjs';

/** The long runs: properties with many more cases, tests/nightly, every kit by hand in a browser, and then every rule broken once. */
if (!(await installPackages())) process.exit(1);
const { ok } = await runModule(
  'vitest/vitest.mjs',
  ['run', 'src', 'tests/nightly', 'tests/sealed-acts.test.ts', 'tests/mishaps-keep-the-seals.test.ts'],
  {
    env: { NIGHTLY: '1' },
    minutes: 240,
  },
);
const built = await runModule('vite/bin/vite.js', ['build'], { quiet: true });
const byHand =
  built.ok &&
  (await ensureBrowser()) &&
  (
    await runModule(
      '@playwright/test/cli.js',
      ['test', '--config', 'tests/playwright.config.ts', 'tests/browser/nightly'],
      { env: { NIGHTLY: '1' }, minutes: 60 },
    )
  ).ok;
const mutants = await run(process.execPath, ['tests/nightly/mutants.mjs'], { minutes: 120 });
process.exitCode = ok && byHand && mutants.ok ? 0 : 1;
