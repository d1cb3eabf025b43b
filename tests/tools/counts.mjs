/** @typedef {{ passed: number, failed: number }} Counts */

/**
 * @typedef {object} VitestReport
 * @property {number} numPassedTests
 * @property {number} numFailedTests
 * @property {{ status: string, assertionResults: { status: string }[] }[]} testResults
 */

/**
 * Vitest's report, counted. A file that failed outside its tests (it did not load) counts as one failure.
 * @param {VitestReport} report
 * @returns {Counts}
 */
export function countVitest({ numPassedTests, numFailedTests, testResults }) {
  const broken = testResults.filter(
    ({ status, assertionResults }) =>
      status === 'failed' && !assertionResults.some((result) => result.status === 'failed'),
  );
  return { passed: numPassedTests, failed: numFailedTests + broken.length };
}

/**
 * Playwright's report, counted. An error outside any test (a spec that did not load) counts as one failure.
 * @param {{ stats: { expected: number, unexpected: number, flaky: number }, errors: unknown[] }} report
 * @returns {Counts}
 */
export function countPlaywright({ stats, errors }) {
  return { passed: stats.expected, failed: stats.unexpected + stats.flaky + errors.length };
}

/**
 * One runner's counts, made honest: it ran nothing, left no report, or ended badly with all tests passed (an
 * unhandled error), and that is a failure as well.
 * @param {boolean} ok
 * @param {Counts | undefined} counts
 * @returns {Counts}
 */
export function settle(ok, counts) {
  if (!counts) return { passed: 0, failed: 1 };
  const { passed, failed } = counts;
  const isBad = !ok || passed + failed === 0;
  return { passed, failed: isBad && failed === 0 ? 1 : failed };
}
