import type { Page } from '@playwright/test';
import { BenchPage } from './bench';
import { expect, test } from './fixtures';
import { spokenOn, withoutVoice, withVoice } from './spoken';
import { violations } from './violations';

test.use({ timezoneId: 'UTC' });
test.slow();

const START = new Date('2031-05-03T15:00:00Z');
const caption = (page: Page) => page.getByRole('log', { name: 'What is said' });

/** A batch at its first act. */
async function begun(page: Page): Promise<BenchPage> {
  await page.clock.install({ time: START });
  await page.goto('/');
  const bench = new BenchPage(page);
  await bench.begin(/Hedge Lantern/, 'Shelf two');
  return bench;
}

/** As far as the first stir: the clay is in. */
async function atTheStir(page: Page): Promise<BenchPage> {
  await withVoice(page);
  const bench = await begun(page);
  await bench.act(/./, () => bench.allThere());
  await bench.act(/hydrometer/i, () => bench.hydrometer('0.001'));
  await bench.act(/./, () => bench.number(/full to the brim/, '30'));
  for (let acts = 0; acts < 4; acts += 1) await bench.act(/./);
  await bench.byTheClock(/./, 600);
  await bench.act(/./);
  await bench.act(/./);
  await bench.act(/./, () => bench.sachet('Bentonite, first in'));
  await bench.heed();
  return bench;
}

test('a stir goes on through a reload, and says how much is left', async ({ page }) => {
  const bench = await atTheStir(page);
  await bench.press(/^start the clock/);
  await expect(page.getByRole('timer')).toBeVisible();
  await bench.wait(40 / 3600);
  await page.reload();
  await expect(page.getByRole('timer')).toHaveText(/^1:1\d$/);
  await expect(caption(page)).toHaveText(/^1 minute and 1\d seconds left\.$/);
});

test('captions are what is spoken, line for line', async ({ page }) => {
  await withVoice(page);
  const bench = await begun(page);
  await bench.act(/./, () => bench.allThere());
  const { lines, captions } = await spokenOn(page);
  expect(lines.length).toBeGreaterThan(5);
  expect(captions.join(' ').replace(/\s+/g, ' ')).toContain(lines.slice(-1)[0]);
  expect(lines.filter((line) => !captions.some((shown) => shown.includes(line)))).toEqual([]);
});

test('the first acts by keys alone', async ({ page }) => {
  await withVoice(page);
  const bench = await begun(page);
  const main = page.locator('.pads button:visible').first();
  await expect(main).toBeEnabled();
  await page.keyboard.press('PageDown');
  await expect(bench.heading).toContainText('Right?');
  await expect(main).toBeEnabled();
  await page.keyboard.press('PageUp');
  await expect(bench.heading).not.toContainText('Right?');
  await page.keyboard.press('PageDown');
  await expect(bench.heading).toContainText('Right?');
  await expect(main).toBeEnabled();
  await page.keyboard.press('Enter');
  await expect(bench.heading).toHaveText(/hydrometer/i);
});

test('a device without a voice, and one that lets the screen go dark, each say so once', async ({ page }) => {
  await withoutVoice(page);
  await page.addInitScript(() => {
    Object.defineProperty(navigator, 'wakeLock', {
      value: { request: () => Promise.reject(new DOMException('no', 'NotAllowedError')) },
    });
  });
  const bench = await begun(page);
  const state = page.getByRole('status', { name: 'Sound and screen' });
  await page.clock.runFor(120_000);
  await expect(state).toHaveText(/no voice, read along\s*may go dark/);
  await bench.act(/./, () => bench.allThere());
});

test('every page of a visit passes axe', async ({ page }) => {
  const bench = await atTheStir(page);
  expect(await violations(page)).toEqual([]);
  await bench.press(/^start the clock/);
  await expect(page.getByRole('timer')).toBeVisible();
  expect(await violations(page)).toEqual([]);
  await bench.wait(125 / 3600);
  await expect(bench.pad(/^that is done/)).toBeVisible();
  expect(await violations(page)).toEqual([]);
  await bench.press(/^that is done/);
  await expect(bench.pad(/^ready to continue/)).toBeVisible();
  expect(await violations(page)).toEqual([]);
});
