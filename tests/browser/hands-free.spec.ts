import type { Page } from '@playwright/test';
import { BenchPage } from './bench';
import { broughtIn, makerOf } from './brought-in';
import { expect, test } from './fixtures';
import { spokenOn } from './spoken';
import { violations } from './violations';

test.use({ timezoneId: 'UTC' });
test.slow();

const START = new Date('2031-05-03T15:00:00Z');
/** Every caption since the page was loaded. */
const shown = async (page: Page) => (await spokenOn(page)).captions.join(' ');

/** A batch at its first act. */
async function begun(page: Page): Promise<BenchPage> {
  await page.clock.install({ time: START });
  await page.goto('/');
  const bench = new BenchPage(page);
  await bench.begin(/Hedge Lantern/, 'Shelf two');
  return bench;
}

test('a degassing stir goes on through a reload, and says how much is left, or how late it is', async ({
  page,
}) => {
  const bench = await broughtIn(page, makerOf('hedge-lantern').goTo('degas'));
  await bench.heed();
  await bench.press(/^start the clock/);
  await expect(page.getByRole('timer')).toBeVisible();
  await bench.wait(98 / 3600);
  await page.reload();
  await expect(page.getByRole('timer')).toHaveText(/^3:[012]\d$/);
  await expect.poll(() => shown(page)).toMatch(/3 minutes( and \d+ seconds?)? left\./);
  await bench.wait(7 / 60);
  await page.reload();
  await expect(page.getByText(/Time was up 3 minutes/).first()).toBeVisible();
  await expect.poll(() => shown(page)).toMatch(/up 3 minutes/);
  await bench.press(/^that is done/);
  await expect(page.getByRole('timer')).toHaveCount(0);
});

test('captions are what is spoken, line for line', async ({ page }) => {
  const bench = await begun(page);
  await bench.act(/./, () => bench.allThere());
  const { lines, captions } = await spokenOn(page);
  expect(lines.length).toBeGreaterThan(5);
  expect(captions.join(' ').replace(/\s+/g, ' ')).toContain(lines.slice(-1)[0]);
  expect(lines.filter((line) => !captions.some((shown) => shown.includes(line)))).toEqual([]);
});

test('the first acts by keys alone', async ({ page }) => {
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

test.describe('a device without a voice', () => {
  test.use({ voice: 'none' });

  test('says so once, as does one that lets the screen go dark', async ({ page }) => {
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
});

for (const colorScheme of ['light', 'dark'] as const)
  test(`a warning, an act, what is asked back, a stir and its end: sound to axe, by ${colorScheme}`, async ({
    page,
  }) => {
    await page.emulateMedia({ colorScheme });
    const maker = makerOf('hedge-lantern').goTo('stabilise');
    while (maker.act?.kind !== 'add') maker.answer();
    const bench = await broughtIn(page, maker);
    await expect(bench.pad(/^ready to continue/)).toBeEnabled();
    expect(await violations(page)).toEqual([]);
    await bench.heed();
    expect(await violations(page)).toEqual([]);
    await bench.press(/^that is done/);
    await expect(bench.heading).toContainText('Right?');
    expect(await violations(page)).toEqual([]);
    await bench.yes();
    await bench.heed();
    await bench.press(/^start the clock/);
    await expect(page.getByRole('timer')).toBeVisible();
    expect(await violations(page)).toEqual([]);
    await bench.wait(31 / 3600);
    await expect(bench.pad(/^that is done/)).toBeVisible();
    expect(await violations(page)).toEqual([]);
  });
