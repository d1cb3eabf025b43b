import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { failuresInPlaywright, failuresInVitest } from './failures.mjs';
import { ROOT } from './run.mjs';

const passed = { fullName: 'a sum is right', status: 'passed', failureMessages: [] };

describe('what failed is named at the end of a run', () => {
  test('in Vitest: the file, the test, and what was said of it', () =>
    expect(
      failuresInVitest({
        testResults: [
          { name: join(ROOT, 'src/a.test.ts'), status: 'passed', message: '', assertionResults: [passed] },
          {
            name: join(ROOT, 'src/b.test.ts'),
            status: 'failed',
            message: '',
            assertionResults: [
              passed,
              {
                fullName: 'a seal holds',
                status: 'failed',
                failureMessages: [
                  '\u001B[31mexpected 1\u001B[39m\nto be 2\n    at /here/b.test.ts:1:1\n    at run (file:///here/node_modules/x.js:1:1)',
                ],
              },
            ],
          },
        ],
      }),
    ).toEqual([
      `✗ ${join('src', 'b.test.ts')} › a seal holds\n    expected 1\n    to be 2\n        at /here/b.test.ts:1:1`,
    ]));

  test('in Vitest: a file that did not load', () =>
    expect(
      failuresInVitest({
        testResults: [
          {
            name: join(ROOT, 'src/c.test.ts'),
            status: 'failed',
            message: 'no such file',
            assertionResults: [],
          },
        ],
      }),
    ).toEqual([`✗ ${join('src', 'c.test.ts')}\n    no such file`]));

  test('of a long message, as much as tells what was wrong', () => {
    const failureMessages = [Array.from({ length: 200 }, (_, line) => `line ${line}`).join('\n')];
    const [only = ''] = failuresInVitest({
      testResults: [
        {
          name: join(ROOT, 'd.test.ts'),
          status: 'failed',
          message: '',
          assertionResults: [{ fullName: 'it goes', status: 'failed', failureMessages }],
        },
      ],
    });
    expect(only).toContain('line 0\n');
    expect(only.split('\n').length).toBeLessThan(50);
  });

  test('in Playwright: what failed, what passed only at the second try, and what went wrong outside', () => {
    const spec = (title: string, status: string, ...messages: string[]) => ({
      title,
      tests: [{ status, results: [{ errors: messages.map((message) => ({ message })) }] }],
    });
    expect(
      failuresInPlaywright({
        suites: [
          {
            title: 'x.spec.ts',
            specs: [spec('goes well', 'expected'), spec('breaks', 'unexpected', 'no pad')],
            suites: [{ title: 'by night', specs: [spec('wavers', 'flaky', 'late')] }],
          },
        ],
        errors: [{ message: 'no server' }],
      }),
    ).toEqual([
      '✗ x.spec.ts › breaks\n    no pad',
      '✗ x.spec.ts › by night › wavers\n    late',
      '✗ outside any test\n    no server',
    ]);
  });
});
