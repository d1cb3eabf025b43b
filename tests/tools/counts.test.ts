import { describe, expect, test } from 'vitest';
import { countPlaywright, countVitest, settle } from './counts.mjs';
import { isInstalled } from './install.mjs';

const file = (status: string, ...results: string[]) => ({
  status,
  assertionResults: results.map((result) => ({ status: result })),
});

describe('what is counted', () => {
  test.each([
    ['tests', [file('passed', 'passed', 'passed'), file('failed', 'failed')], { passed: 2, failed: 1 }],
    [
      'a file that did not load',
      [file('passed', 'passed', 'passed'), file('failed')],
      { passed: 2, failed: 1 },
    ],
  ])('in vitest: %s', (_, testResults, counts) => {
    const numFailedTests = testResults
      .flatMap(({ assertionResults }) => assertionResults)
      .filter(({ status }) => status === 'failed').length;
    expect(countVitest({ numPassedTests: 2, numFailedTests, testResults })).toEqual(counts);
  });

  test('in Playwright: a flaky test and an error outside the tests are failures', () =>
    expect(
      countPlaywright({ stats: { expected: 5, unexpected: 1, flaky: 1 }, errors: ['no server'] }),
    ).toEqual({
      passed: 5,
      failed: 3,
    }));
});

describe('a stage', () => {
  test.each([
    ['that went well', true, { passed: 3, failed: 0 }, { passed: 3, failed: 0 }],
    ['with failures', false, { passed: 3, failed: 2 }, { passed: 3, failed: 2 }],
    ['that ended badly with every test passed', false, { passed: 3, failed: 0 }, { passed: 3, failed: 1 }],
    ['that ran nothing', true, { passed: 0, failed: 0 }, { passed: 0, failed: 1 }],
    ['that left no report', false, undefined, { passed: 0, failed: 1 }],
  ])('%s', (_, ok, counts, settled) => expect(settle(ok, counts)).toEqual(settled));
});

describe('the packages are installed', () => {
  const lock = { '': { version: '1.0.0' }, a: { version: '1.0.0' }, b: { version: '2.0.0', optional: true } };
  test.each([
    ['when all are there', { a: { version: '1.0.0' }, b: { version: '2.0.0' } }, true],
    ['when only an optional one is absent', { a: { version: '1.0.0' } }, true],
    ['not when one is absent', { b: { version: '2.0.0' } }, false],
    ['not when one is older', { a: { version: '0.9.0' } }, false],
    ['not when npm left no record', undefined, false],
  ])('%s', (_, installed, answer) => expect(isInstalled(lock, installed)).toBe(answer));
});
