import './node-version.mjs';
import { installPackages } from './install.mjs';
import { runModule } from './run.mjs';

/** Records the golden batches and the event fields that are new; what is recorded already is never changed. */
if (!(await installPackages())) process.exit(1);
const { ok } = await runModule('vitest/vitest.mjs', ['run', '--project', 'node', 'tests/golden'], {
  env: { RECORD_GOLDEN: '1' },
});
process.exitCode = ok ? 0 : 1;
