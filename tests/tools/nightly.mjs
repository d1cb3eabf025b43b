import './node-version.mjs';
import { installPackages } from './install.mjs';
import { runModule } from './run.mjs';

/** The long runs: properties with many more cases, and tests/nightly. */
if (!(await installPackages())) process.exit(1);
const { ok } = await runModule('vitest/vitest.mjs', ['run', 'src', 'tests/nightly'], {
  env: { NIGHTLY: '1' },
  minutes: 240,
});
process.exitCode = ok ? 0 : 1;
