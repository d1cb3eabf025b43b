import { failureTold } from './failures.mjs';
import { runModule } from './run.mjs';

/** @type {readonly [script: string, ...args: string[]]} */
const ESLINT = ['eslint/bin/eslint.js', '--config', 'tests/eslint.config.js', '--max-warnings', '0'];

/** The slowest first: two run at a time. @type {readonly (readonly [name: string, script: string, ...args: string[]])[]} */
const CHECKS = [
  ['eslint src', ...ESLINT, 'src'],
  ['eslint tests', ...ESLINT, '.', '--ignore-pattern', 'src/**'],
  ['svelte-check', 'svelte-check/bin/svelte-check', '--fail-on-warnings', '--output', 'human'],
  ['types', 'typescript/bin/tsc', '--project', 'tsconfig.json'],
  ['no DOM below floor 3', 'typescript/bin/tsc', '--project', 'tests/tsconfig.pure.json'],
  ['prettier', 'prettier/bin/prettier.cjs', '--check', '--log-level', 'warn', '.'],
  ['knip', 'knip/bin/knip.js', '--no-progress'],
];

/**
 * Runs every static check, two at a time, and shows the output of those that fail.
 * @param {string[]} told takes the names of those that fail, and what they said
 */
export async function runChecks(told) {
  const waiting = [...CHECKS];
  const counts = { passed: 0, failed: 0 };
  const worker = async () => {
    for (let check = waiting.shift(); check; check = waiting.shift()) {
      const [name, script, ...args] = check;
      const { ok, output, seconds } = await runModule(script, args, { quiet: true, minutes: 8 });
      counts[ok ? 'passed' : 'failed'] += 1;
      console.log(
        `${ok ? '✓' : '✗'} ${name} (${seconds.toFixed(1)} s)${ok ? '' : `\n${output.trimEnd()}\n`}`,
      );
      if (!ok) told.push(failureTold(name, [output]));
    }
  };
  await Promise.all([worker(), worker()]);
  return counts;
}
