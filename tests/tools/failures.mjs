import { relative } from 'node:path';
import { stripVTControlCharacters } from 'node:util';
import { ROOT } from './run.mjs';

/** As much of a message as tells what was wrong: a counterexample and its seed fit in it. */
const LINES = 30;
/** A line of a stack that is not of our code. */
const IN_A_RUNNER = /^ +at (?:.*\bnode_modules\b|new Promise )/;

/**
 * One failure as it is told: its place, and beneath it the first lines of what was said of it, without colours.
 * @param {string} where
 * @param {readonly string[]} messages
 * @returns {string}
 */
export function failureTold(where, messages) {
  const lines = stripVTControlCharacters(messages.join('\n'))
    .trim()
    .split('\n')
    .filter((line) => !IN_A_RUNNER.test(line))
    .slice(0, LINES);
  return [`✗ ${where}`, ...lines.map((line) => `    ${line}`)].join('\n');
}

/**
 * What failed in Vitest's report, one paragraph for each test, or file that did not load: its name, and the
 * first lines of what was said of it.
 * @param {{ testResults: { name: string, status: string, message: string, assertionResults: { fullName: string, status: string, failureMessages: string[] | null }[] }[] }} report
 * @returns {string[]}
 */
export function failuresInVitest({ testResults }) {
  return testResults.flatMap(({ name, status, message, assertionResults }) => {
    const file = relative(ROOT, name);
    const failed = assertionResults.filter((result) => result.status === 'failed');
    if (status === 'failed' && failed.length === 0) return [failureTold(file, [message])];
    return failed.map(({ fullName, failureMessages }) =>
      failureTold(`${file} › ${fullName}`, failureMessages ?? []),
    );
  });
}

/**
 * @typedef {{ message?: string }} Fault
 * @typedef {{ title: string, tests: { status: string, results: { errors: Fault[] }[] }[] }} Spec
 * @typedef {{ title: string, specs?: Spec[], suites?: Suite[] }} Suite
 */

/**
 * What failed in Playwright's report, or passed only when tried again; and what went wrong outside any test.
 * @param {{ suites: Suite[], errors: Fault[] }} report
 * @returns {string[]}
 */
export function failuresInPlaywright({ suites, errors }) {
  /** @type {(suite: Suite, above: string) => string[]} */
  const within = ({ title, specs = [], suites: inner = [] }, above) => {
    const path = above ? `${above} › ${title}` : title;
    return [
      ...specs.flatMap((spec) =>
        spec.tests
          .filter(({ status }) => status === 'unexpected' || status === 'flaky')
          .map(({ results }) =>
            failureTold(
              `${path} › ${spec.title}`,
              results.flatMap((result) => result.errors.map(({ message = '' }) => message)),
            ),
          ),
      ),
      ...inner.flatMap((suite) => within(suite, path)),
    ];
  };
  return [
    ...suites.flatMap((suite) => within(suite, '')),
    ...errors.map(({ message = '' }) => failureTold('outside any test', [message])),
  ];
}
