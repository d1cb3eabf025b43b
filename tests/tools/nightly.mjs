import './node-version.mjs';
import { installPackages } from './install.mjs';
import { run, runModule } from './run.mjs';

/** The long runs: properties with many more cases, tests/nightly, and then every rule broken once. */
if (!(await installPackages())) process.exit(1);
const { ok } = await runModule(
  'vitest/vitest.mjs',
  ['run', 'src', 'tests/nightly', 'tests/sealed-acts.test.ts', 'tests/mishaps-keep-the-seals.test.ts'],
  {
    env: { NIGHTLY: '1' },
    minutes: 240,
  },
);
const mutants = await run(process.execPath, ['tests/nightly/mutants.mjs'], { minutes: 120 });
process.exitCode = ok && mutants.ok ? 0 : 1;
