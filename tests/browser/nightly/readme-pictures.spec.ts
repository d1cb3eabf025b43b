import { mkdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import type { Instant } from '../../../src/domain/unit';
import { builtInSheets } from '../../../src/procedure/kits';
import { en } from '../../../src/text/en';
import { Maker, type Wine } from '../../story/maker';
import { broughtIn, makerOf } from '../brought-in';
import { expect, test } from '../fixtures';

/** Pictures of real screens, for the README and the manifest: `README_PICTURES=<folder>` says where they go. */
const FOLDER = process.env['README_PICTURES'];
const MOST_BYTES = 160_000;

test.use({
  timezoneId: 'UTC',
  viewport: { width: 390, height: 844 },
  deviceScaleFactor: 1.5,
  hasTouch: true,
});

async function picture(page: Page, name: string, to = FOLDER ?? test.info().outputPath()): Promise<void> {
  mkdirSync(to, { recursive: true });
  const path = join(to, `${name}.png`);
  await page.evaluate(() => document.fonts.ready);
  await page.screenshot({ path, animations: 'disabled' });
  expect(statSync(path).size).toBeLessThan(MOST_BYTES);
}

test('an act by day', async ({ page }) => {
  await page.emulateMedia({ colorScheme: 'light' });
  const maker = makerOf('hedge-lantern').goTo('mix');
  while (maker.act?.step !== 'pour juice') maker.answer();
  const bench = await broughtIn(page, maker);
  await bench.heed();
  await expect(bench.heading).toHaveText(/^Pour the juice/);
  await picture(page, 'act');
});

test('the dryness gate, shut by night', async ({ page }) => {
  await page.emulateMedia({ colorScheme: 'dark' });
  const [sheet] = builtInSheets;
  const slow: Wine = { gravityOn: (day) => 0.994 + 0.074 * Math.exp(-day / 6), celsius: 21 };
  const begun = { at: Date.UTC(2031, 4, 3, 15) as Instant, offsetMinutes: 0 };
  const bench = await broughtIn(page, new Maker(sheet!, slow, begun).goTo('proving dry'));
  await expect(bench.heading).toHaveText('Not yet.');
  await picture(page, 'gate');
});

test('a stir on its way by night', async ({ page }) => {
  await page.emulateMedia({ colorScheme: 'dark' });
  const bench = await broughtIn(page, makerOf('hedge-lantern').goTo('degas'));
  await bench.heed();
  await bench.press(/^start the clock/);
  await expect(page.getByRole('timer')).toBeVisible();
  await bench.wait(78 / 3600);
  await picture(page, 'stir');
});

test('what went wrong, by day', async ({ page }) => {
  await page.emulateMedia({ colorScheme: 'light' });
  const maker = makerOf('hedge-lantern').goTo('ferment');
  while (maker.act?.step !== 'read on the way') maker.answer();
  const bench = await broughtIn(page, maker);
  await bench.press(/^something went wrong/);
  await bench.press(en.whatHappened.mishaps['airlock dry'].title);
  await expect(page.getByRole('img', { name: /^Three airlocks/ })).toBeVisible();
  await picture(page, 'mishap');
});

test('the journal by day', async ({ page }) => {
  await page.emulateMedia({ colorScheme: 'light' });
  await broughtIn(page, makerOf('hedge-lantern').goTo('rack'));
  await page.goto(`${page.url()}/journal`);
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await picture(page, 'journal');
});

test.describe('on a tablet', () => {
  test.use({ viewport: { width: 1280, height: 800 }, deviceScaleFactor: 1 });

  test('the sachets that must not go in too early, by night', async ({ page }) => {
    await page.emulateMedia({ colorScheme: 'dark' });
    const maker = makerOf('hedge-lantern').goTo('stabilise');
    while (maker.act?.kind !== 'add' || !/sorbate/i.test(maker.act.sachet.printed)) maker.answer();
    const bench = await broughtIn(page, maker);
    await expect(bench.pad(/^ready to continue/)).toBeVisible();
    await picture(page, 'tablet');
  });
});
