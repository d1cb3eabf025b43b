import type { Page } from '@playwright/test';
import { expect, test } from './fixtures';
import { violations } from './violations';

const heading = (page: Page) => page.getByRole('heading', { level: 1 });
const chooseKit = (page: Page) => page.getByRole('radio', { name: /Hedge Lantern/ }).check();

/** A batch with one line in its journal. */
async function noted(page: Page) {
  await page.goto('/#/start');
  await chooseKit(page);
  await page.getByRole('button', { name: 'begin this batch' }).click();
  await expect(page).toHaveTitle(/Check the box/);
  const { hash } = new URL(page.url());
  await page.goto(`/${hash}/journal`);
  await page.getByLabel('Add a note').fill('The bag was a little swollen.');
  await page.getByRole('button', { name: 'write it down' }).click();
  await expect(page.getByRole('listitem')).toHaveCount(1);
}

/** In an order in which each leads to the next. */
const SCREENS: [screen: string, open: (page: Page) => Promise<unknown>][] = [
  ['opening, empty', (page) => page.goto('/')],
  ['settings', (page) => page.goto('/#/settings')],
  ['help', (page) => page.goto('/#/help')],
  ['safety card', (page) => page.goto('/#/safety')],
  ['nothing here', (page) => page.goto('/#/nowhere')],
  ['start', (page) => page.goto('/#/start').then(() => chooseKit(page))],
  ['journal', noted],
  ['opening, with a batch', (page) => page.goto('/#/')],
];

for (const colorScheme of ['light', 'dark'] as const)
  test(`every screen beside the bench: sound to axe, by ${colorScheme}`, async ({ page }) => {
    test.slow();
    await page.emulateMedia({ colorScheme });
    const found: Record<string, unknown> = {};
    let title = '';
    for (const [screen, open] of SCREENS) {
      await open(page);
      await expect(page).not.toHaveTitle(title);
      title = await page.title();
      for (const fold of await page.locator('summary').all()) await fold.click();
      found[screen] = await violations(page);
    }
    expect(found).toEqual(Object.fromEntries(SCREENS.map(([screen]) => [screen, []])));
  });

test('the safety card prints in black on white, without what is only for the screen', async ({ page }) => {
  await page.goto('/#/safety');
  await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
  await expect(page.getByText('this is guidance, not a licence')).toBeVisible();
  await expect(page.getByText('If none of it left a room of 30 cubic metres')).toBeVisible();
  await expect(page.getByRole('button', { name: 'print this card' })).toBeHidden();
  await expect(page.getByRole('navigation')).toBeHidden();
  const { background, ink } = await page.evaluate(() => {
    const { backgroundColor, color } = getComputedStyle(document.documentElement);
    return { background: backgroundColor, ink: color };
  });
  expect({ background, ink }).toEqual({ background: 'rgb(255, 255, 255)', ink: 'rgb(0, 0, 0)' });
});

test('no screen scrolls sideways at 320 pixels, with all that can be unfolded', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 640 });
  for (const address of ['#/', '#/start', '#/settings', '#/help', '#/safety', '#/school', '#/nowhere']) {
    await page.goto(`/${address}`);
    await expect(heading(page)).toBeVisible();
    if (address === '#/start') await chooseKit(page);
    for (const fold of await page.locator('summary').all()) await fold.click();
    const over = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect({ address, over }).toEqual({ address, over: 0 });
  }
});
