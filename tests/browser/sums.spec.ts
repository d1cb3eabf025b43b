import type { Page } from '@playwright/test';
import { BenchPage } from './bench';
import { expect, test } from './fixtures';
import { violations } from './violations';

/** The way there is a whole start of a batch. */
test.slow();

/** The sums of a batch that has just begun, by the way that a maker goes. */
async function open(page: Page): Promise<void> {
  await page.goto('/');
  await new BenchPage(page).begin(/Chalk Meadow/, 'Shelf two');
  await page.goto('/#/');
  await page.getByRole('link', { name: 'Sums of Shelf two' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Sums of Shelf two');
}

for (const colorScheme of ['light', 'dark'] as const)
  test(`the sums, all unfolded: sound to axe, and no wider than a small phone, by ${colorScheme}`, async ({
    page,
  }) => {
    await page.emulateMedia({ colorScheme });
    await page.setViewportSize({ width: 320, height: 640 });
    await open(page);
    for (const fold of await page.locator('summary').all()) await fold.click();
    expect(await violations(page)).toEqual([]);
    const over = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(over).toBe(0);
  });

test('the last water is reckoned as it is typed, and what cannot be is refused beside its field', async ({
  page,
}) => {
  await open(page);
  const reckoner = page.getByRole('group').filter({ hasText: 'How warm must the last water be?' });
  await reckoner.getByText('How warm must the last water be?').click();
  await reckoner.getByLabel('In the vessel now').fill('13');
  await reckoner.getByLabel('As warm as').fill('16');
  await reckoner.getByLabel('Water still to come').fill('10');
  await reckoner.getByLabel('The must should land at').fill('22');
  await expect(reckoner.getByText(/^Pour the water at (28|29)(\.\d)? °C\.$/)).toBeVisible();
  await reckoner.getByLabel('The must should land at').fill('220');
  await reckoner.getByLabel('The must should land at').press('Tab');
  await expect(reckoner.getByText(/“220” is not a temperature between 10 °C and 35 °C/)).toBeVisible();
  await expect(reckoner.getByText(/^Pour the water/)).toBeHidden();
});

test('is fetched only when it is looked at', async ({ page }) => {
  const scripts: string[] = [];
  page.on('request', (request) => scripts.push(request.url()));
  await page.goto('/');
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  expect(scripts.filter((url) => /SumsScreen/.test(url))).toEqual([]);
  await open(page);
  expect(scripts.filter((url) => /SumsScreen.*\.js$/.test(url))).toHaveLength(1);
});
