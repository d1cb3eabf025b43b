import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { begin, expect, firstAct, heading, load, news, test } from './site';

test.beforeEach(() => test.slow());

const allBatches = (page: Page) => page.getByRole('button', { name: 'all batches' }).click();
/** The mark of a later version; the first has none. */
const version = (page: Page) => page.locator('meta[name="version"]');

/** The browser looks for a later version, as it does by itself when the app is opened, and has it at hand. */
const look = (page: Page) =>
  page.evaluate(async () => {
    const registration = (await navigator.serviceWorker.getRegistration())!;
    await registration.update();
  });

const waiting = (page: Page) =>
  page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.waiting?.state);

async function stillWaits(page: Page): Promise<void> {
  expect(await waiting(page)).toBe('installed');
  await expect(version(page)).toHaveCount(0);
}

test('a new version waits while a batch is open, says so once, and comes in at all batches', async ({
  page,
  site,
}) => {
  await load(page);
  const bench = await begin(page);
  site.publish('2');
  await look(page);
  await expect(news(page)).toContainText('A new version is ready.');
  await firstAct(bench);
  await stillWaits(page);

  const second = (await heading(page).textContent()) ?? '';
  await page.reload();
  await expect(heading(page)).toHaveText(second);
  await expect(news(page)).toContainText('A new version is ready.');
  await stillWaits(page);
  await news(page).getByRole('button', { name: 'Put this message away' }).click();
  await expect(news(page)).toHaveText('');

  await allBatches(page);
  await expect(version(page)).toHaveAttribute('content', '2');
  await expect(news(page)).toHaveText('');
  await page.getByRole('article').getByRole('link').first().click();
  await expect(heading(page)).toHaveText(second);
});

test('a new version waits also while a batch is open in another window', async ({ page, site, context }) => {
  await load(page);
  await begin(page);
  const other = await context.newPage();
  await other.goto('./');
  site.publish('2');
  await look(other);
  await expect(news(other)).toContainText('A new version is ready.');
  await expect(news(page)).toContainText('A new version is ready.');
  await stillWaits(other);
  await allBatches(page);
  for (const each of [page, other]) await expect(version(each)).toHaveAttribute('content', '2');
});

test('a new version comes in at once on the opening screen, and works without the server', async ({
  page,
  site,
}) => {
  await load(page);
  site.publish('2');
  await look(page);
  await expect(version(page)).toHaveAttribute('content', '2');
  await site.stop();
  await page.reload();
  await begin(page);
  await expect(version(page)).toHaveAttribute('content', '2');
  const kept = await page.evaluate(async () => {
    const [name = ''] = await caches.keys();
    return (await (await caches.open(name)).keys()).length;
  });
  expect(kept).toBe(site.listed().length);
});

test('a new version of which a file is missing is not taken, and the old one goes on', async ({
  page,
  site,
}) => {
  await load(page);
  site.publish('2');
  const worker = join(site.folder, 'service-worker.js');
  writeFileSync(worker, readFileSync(worker, 'utf8').replace('"icon.svg"', '"gone.svg"'));
  const gone = page.context().waitForEvent('response', (response) => response.url().endsWith('gone.svg'));
  await look(page).catch(() => undefined);
  expect((await gone).status()).toBe(404);
  await page.reload();
  await site.stop();
  await page.reload();
  await expect(heading(page)).toHaveText('Fallbright');
  await expect(version(page)).toHaveCount(0);
});
