import './node-version.mjs';
import { readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { ensureBrowser } from './browser.mjs';
import { runChecks } from './checks.mjs';
import { countPlaywright, countVitest, settle } from './counts.mjs';
import { failuresInPlaywright, failuresInVitest } from './failures.mjs';
import { installPackages } from './install.mjs';
import { ROOT, runModule } from './run.mjs';

/** @typedef {import('./counts.mjs').Counts} Counts */

/** What failed, to be told once more at the end: a log is often seen by its last lines alone. @type {string[]} */
const told = [];

/**
 * Runs a test runner that leaves a JSON report, and counts it.
 * @template Counted, Named
 * @param {string} report
 * @param {(report: Counted) => Counts} count
 * @param {(report: Named) => string[]} failuresIn
 * @param {() => Promise<{ ok: boolean }>} start
 * @returns {Promise<Counts>}
 */
async function counted(report, count, failuresIn, start) {
  rmSync(join(ROOT, report), { force: true });
  const { ok } = await start();
  try {
    /** @type {Counted & Named} */
    const left = JSON.parse(readFileSync(join(ROOT, report), 'utf8'));
    told.push(...failuresIn(left));
    return settle(ok, count(left));
  } catch {
    return settle(false, undefined);
  }
}

const UNIT_REPORT = 'test-results/unit.json';
const BROWSER_REPORT = 'test-results/browser.json';

const runUnit = () =>
  counted(UNIT_REPORT, countVitest, failuresInVitest, () =>
    runModule('vitest/vitest.mjs', [
      'run',
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${UNIT_REPORT}`,
    ]),
  );

/** The browser tests, on the site as it will be served: a build that fails is their failure. */
async function runBrowser() {
  const { ok, output } = await runModule('vite/bin/vite.js', ['build'], { quiet: true });
  if (!ok) console.error(output);
  if (!ok || !(await ensureBrowser())) return { passed: 0, failed: 1 };
  return counted(BROWSER_REPORT, countPlaywright, failuresInPlaywright, () =>
    runModule('@playwright/test/cli.js', ['test', '--config', 'tests/playwright.config.ts'], {
      env: { PLAYWRIGHT_JSON_OUTPUT_FILE: join(ROOT, BROWSER_REPORT) },
    }),
  );
}

const STAGES = { check: () => runChecks(told), unit: runUnit, browser: runBrowser };

/** @returns {readonly (keyof typeof STAGES)[]} */
function chosenStages() {
  const { only } = parseArgs({ options: { only: { type: 'string' } } }).values;
  if (only === undefined) return ['check', 'unit', 'browser'];
  if (only === 'check' || only === 'unit' || only === 'browser') return [only];
  console.error(`"--only ${only}" is unknown: say --only check, --only unit or --only browser.`);
  process.exit(2);
}

/**
 * A stage that breaks down is a failure to report, not the end of the run.
 * @param {() => Promise<Counts>} stage
 * @returns {Promise<Counts>}
 */
async function held(stage) {
  try {
    return await stage();
  } catch (error) {
    console.error(error);
    return { passed: 0, failed: 1 };
  }
}

const stages = chosenStages();
const total = { passed: 0, failed: 0 };
const failures = [];
const isReady = await installPackages();
if (!isReady) {
  total.failed = 1;
  failures.push('install');
}
for (const stage of isReady ? stages : []) {
  console.log(`\n— ${stage} —`);
  const { passed, failed } = await held(STAGES[stage]);
  total.passed += passed;
  total.failed += failed;
  if (failed > 0) failures.push(`${stage} (${failed})`);
}
if (failures.length > 0) console.log(['', ...told, `Failed: ${failures.join(', ')}`].join('\n'));
process.exitCode = total.failed > 0 || total.passed === 0 ? 1 : 0;
console.log(`\n${total.passed} passed, ${total.failed} failed`);
