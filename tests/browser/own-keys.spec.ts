import type { Page } from '@playwright/test';
import { broughtIn, makerOf } from './brought-in';
import { expect, test } from './fixtures';
import { keptEvents } from './kept-events';

test.use({ timezoneId: 'UTC' });

const mainPad = (page: Page) => page.getByRole('group', { name: 'Main pad' });
const doneActs = async (page: Page) => (await keptEvents(page)).filter(({ type }) => type === 'act done');

test('a pedal whose key was given to the main pad moves the guide, is listed, and is kept over a reload', async ({
  page,
}) => {
  const bench = await broughtIn(page, makerOf('hedge-lantern').goTo('clean'));
  const address = page.url();
  await bench.heed();
  const already = (await doneActs(page)).length;
  await page.keyboard.press('F9');
  await page.keyboard.press('b');
  expect(await doneActs(page)).toHaveLength(already);

  await page.goto('/#/settings');
  for (const key of ['F9', 'b']) {
    await mainPad(page).getByRole('button').click();
    await page.keyboard.press(key);
    await expect(mainPad(page).getByText(/^Taken/)).toBeVisible();
  }
  await expect(mainPad(page).locator('kbd')).toContainText(['F9', 'B', 'space']);

  await page.goto(address);
  await page.reload();
  await bench.heed();
  await expect(page.locator('.pads button:visible').first()).toBeEnabled();
  await page.keyboard.press('F9');
  await expect.poll(() => doneActs(page)).toHaveLength(already + 1);
  await bench.heed();
  await expect(page.locator('.pads button:visible').first()).toBeEnabled();
  await page.keyboard.press('b');
  await expect.poll(() => doneActs(page)).toHaveLength(already + 2);

  await page.goto('/#/settings');
  await expect(mainPad(page).locator('kbd')).toContainText(['F9', 'B', 'space']);
  await page.goto('/#/help');
  await expect(page.getByRole('row', { name: /presses the main pad/ })).toContainText('F9, B, space');
});

test('an earphone’s button is its key at the bench, once for each press, and nothing elsewhere', async ({
  page,
}) => {
  await page.addInitScript(() => {
    const handlers = new Map<string, MediaSessionActionHandler>();
    Object.assign(globalThis, { handlers });
    navigator.mediaSession.setActionHandler = (action, handler) => {
      if (handler) handlers.set(action, handler);
      else handlers.delete(action);
    };
  });
  const button = (action: MediaSessionAction) =>
    page.evaluate(
      (of) =>
        (globalThis as unknown as { handlers: Map<string, MediaSessionActionHandler> }).handlers.get(of)?.({
          action: of,
        }),
      action,
    );
  const taken = () =>
    page.evaluate(() => (globalThis as unknown as { handlers: Map<string, unknown> }).handlers.size);
  const bench = await broughtIn(page, makerOf('hedge-lantern').goTo('clean'));
  await bench.heed();
  const already = (await doneActs(page)).length;
  await expect(page.locator('.pads button:visible').first()).toBeEnabled();
  await button('pause');
  await page.keyboard.press('MediaPlayPause');
  await expect.poll(() => doneActs(page)).toHaveLength(already + 1);
  await bench.heed();
  await expect(page.locator('.pads button:visible').first()).toBeEnabled();
  await bench.wait(1 / 3600);
  await button('nexttrack');
  await expect.poll(() => doneActs(page)).toHaveLength(already + 2);
  expect((await doneActs(page)).slice(already).map(({ how }) => how)).toEqual(['key', 'key']);
  expect(await taken()).toBe(4);
  await page.goto('/#/settings');
  await expect.poll(taken).toBe(0);
});
