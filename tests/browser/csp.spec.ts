import { readdirSync } from 'node:fs';
import { expect, test } from './fixtures';

/** What TypeScript's DOM does not know yet. */
type Page = { trustedTypes: { createPolicy: (name: string, rules: object) => unknown } };

const SUB_PATH = '/some/sub/path/';

for (const path of ['/', SUB_PATH])
  test(`the app opens at ${path}, and asks for nothing outside it`, async ({ page }) => {
    const paths: string[] = [];
    page.on('request', (request) => paths.push(new URL(request.url()).pathname));
    await page.goto(path);
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    expect(paths.length).toBeGreaterThan(1);
    expect(paths.filter((asked) => !asked.startsWith(path))).toEqual([]);
  });

test.describe('the policy refuses', () => {
  const attempts: [what: string, directive: string, attempt: () => void][] = [
    ['markup as a string', 'require-trusted-types-for', () => (document.body.innerHTML = '<b>x</b>')],
    [
      'another policy',
      'trusted-types',
      () => void (window as unknown as Page).trustedTypes.createPolicy('another', {}),
    ],
    [
      'a request elsewhere',
      'connect-src',
      () => void fetch('https://example.invalid/').catch(() => undefined),
    ],
    [
      'an inline script',
      'require-trusted-types-for',
      () => {
        const script = document.createElement('script');
        script.append('document.title = "run"');
        document.head.append(script);
      },
    ],
    [
      'an inline style',
      'style-src',
      () => {
        const style = document.createElement('style');
        style.append('body { display: none }');
        document.head.append(style);
      },
    ],
  ];
  for (const [what, directive, attempt] of attempts)
    test(what, async ({ page, faults }) => {
      await page.goto('/');
      await page.evaluate(attempt).catch(() => undefined);
      await expect
        .poll(() => faults.filter((fault) => fault.startsWith(`error: policy: ${directive}`)))
        .not.toEqual([]);
      faults.length = 0;
    });
});

test('only latin fonts are shipped', () => {
  const fonts = readdirSync('dist', { recursive: true, encoding: 'utf8' }).filter((file) =>
    /\.(woff2?|ttf|otf)$/.test(file),
  );
  expect(fonts.filter((file) => !/-latin-(?!ext)[^/]*\.woff2$/.test(file))).toEqual([]);
});
