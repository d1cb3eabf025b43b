import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import hedgeLantern from '../../src/procedure/kits/hedge-lantern.json' with { type: 'json' };
import { expect, test } from './fixtures';
import { begin, firstAct, heading } from './site';

const asFile = (name: string, text: string) => ({
  name,
  mimeType: 'application/json',
  buffer: Buffer.from(text),
});

test.beforeEach(async ({ page }) => {
  await page.clock.setFixedTime(new Date('2031-05-03T15:00:00Z'));
  await page.goto('/');
  await expect(heading(page)).toHaveText('Fallbright');
});

async function bringIn(page: Page, button: string, file: { name: string; mimeType: string; buffer: Buffer }) {
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: button }).click();
  await (await chooser).setFiles(file);
}

async function keepFile(page: Page): Promise<string> {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Keep it as a file' }).first().click();
  return readFileSync(await (await download).path(), 'utf8');
}

const journalOf = (page: Page) => page.getByRole('button', { name: 'journal', exact: true }).click();

test('a batch begins, takes its first act, and is where it was after a reload', async ({ page }) => {
  test.slow();
  await firstAct(await begin(page));
  const second = (await heading(page).textContent()) ?? '';
  await page.reload();
  await expect(heading(page)).toHaveText(second);
  await page.getByRole('button', { name: 'all batches' }).click();
  const card = page.getByRole('article');
  await expect(card).toContainText('Shelf two');
  await expect(card).toContainText('Now Check the hydrometer in water');
  await page.getByRole('link', { name: 'Journal of Shelf two' }).click();
  await expect(page.getByRole('listitem')).toHaveText(/Every sachet of the sheet was in the box\./);
});

test('a batch that is kept, deleted and brought in again is the same to the letter', async ({ page }) => {
  test.slow();
  await firstAct(await begin(page));
  await journalOf(page);
  await page.getByLabel('Add a note').fill('The bag was a little swollen.');
  await page.getByRole('button', { name: 'write it down' }).click();
  await expect(page.getByText('Note: The bag was a little swollen.')).toBeVisible();
  const kept = await keepFile(page);
  const address = page.url();

  await page.getByText('Delete this batch').click();
  await page.getByLabel(/^To delete it, type its name/).fill('Shelf two');
  await page.getByRole('button', { name: 'delete for good' }).click();
  await expect(page.getByRole('article')).toHaveCount(0);

  await bringIn(page, 'Bring in a batch file', asFile('shelf-two.batch.json', kept));
  await expect(page.getByText('Shelf two is here, with all that its file holds.')).toBeVisible();
  await page.goto(address);
  expect(await keepFile(page)).toBe(kept);
});

test('with the keyboard alone, from the opening to the first act', async ({ page }) => {
  test.slow();
  const tabTo = async (name: RegExp) => {
    for (let presses = 0; presses < 40; presses += 1) {
      await page.keyboard.press('Tab');
      const focused = page.locator(':focus');
      const label = await focused.evaluate(
        (element) =>
          element.closest('label')?.textContent ?? element.getAttribute('aria-label') ?? element.textContent,
      );
      if (name.test(label)) return;
    }
    throw new Error(`the keyboard never came to ${name.source}`);
  };
  await tabTo(/^Start a batch$/);
  await page.keyboard.press('Enter');
  await expect(heading(page)).toBeFocused();
  await tabTo(/Hedge Lantern/);
  await page.keyboard.press('Space');
  await tabTo(/^begin this batch$/);
  await page.keyboard.press('Enter');
  await expect(page).toHaveTitle(/Check the box/);
  for (const { printed } of hedgeLantern.sachets.toSorted((a, b) => a.printed.localeCompare(b.printed))) {
    const tick = page.getByRole('checkbox', { name: new RegExp(printed) });
    await tick.focus();
    await page.keyboard.press('Space');
  }
  const first = await heading(page).textContent();
  await tabTo(/^that is done/);
  await page.keyboard.press('Enter');
  await expect(heading(page)).not.toHaveText(first ?? '');
  await expect(heading(page)).toBeFocused();
});

test.describe('an address that leads nowhere', () => {
  for (const [address, sentence] of [
    ['#/cellar/door', 'There is nothing at “cellar/door”.'],
    ['#/batch/gone', 'There is no such batch on this device.'],
    ['#/batch/gone/journal', 'There is no such batch on this device.'],
  ] as const)
    test(address, async ({ page }) => {
      await page.goto(`/${address}`);
      await expect(page.getByText(sentence)).toBeVisible();
      await expect(page).toHaveTitle('Nothing here · Fallbright');
      await page.getByRole('link', { name: 'Go to all batches' }).click();
      await expect(heading(page)).toHaveText('Fallbright');
    });
});

test.describe('a file that cannot be used', () => {
  for (const [what, text, sentence] of [
    ['torn in two', '{"format":"fallbright batch","version":1,', 'This file is not whole'],
    ['of another kind', '{"format":"a recipe"}', 'This file is not a batch of this guide.'],
    ['from a later day', '{"format":"fallbright batch","version":9}', 'which is newer than this guide'],
    ['damaged', '{"format":"fallbright batch","version":1,"id":7}', 'This batch file is damaged at id'],
  ] as const)
    test(`a batch file that is ${what}`, async ({ page }) => {
      await bringIn(page, 'Bring in a batch file', asFile('batch.json', text));
      await expect(page.getByRole('alert')).toContainText(sentence);
      await expect(page.getByRole('article')).toHaveCount(0);
    });

  test('a sheet that puts sorbate into the mix', async ({ page }) => {
    const sachets = hedgeLantern.sachets.map((sachet) =>
      sachet.id === 'sorbate' ? { ...sachet, when: 'mix' } : sachet,
    );
    await page.getByRole('link', { name: 'Start a batch' }).click();
    await bringIn(
      page,
      'Use a sheet from a file',
      asFile('sheet.json', JSON.stringify({ ...hedgeLantern, sachets })),
    );
    await expect(page.getByRole('alert').getByRole('listitem')).toHaveText([
      'sachets.3.when (“mix”): What it holds may go in only at: stabilise.',
    ]);
  });
});

test('volumes are kept in US gallons, by their full name', async ({ page }) => {
  await page.getByRole('link', { name: 'Settings' }).click();
  await page.getByRole('radio', { name: 'US gallons' }).check();
  await expect(page.getByText('Kept on this device.')).toBeVisible();
  await page.reload();
  await expect(page.getByRole('radio', { name: 'US gallons' })).toBeChecked();
  await page.goto('/#/start');
  await expect(page.getByRole('radio', { name: /Hedge Lantern/ }).locator('..')).toContainText(
    '6.1 US gallons',
  );
});

test('a chosen look stays, before anything is drawn', async ({ page }) => {
  await page.goto('/#/settings');
  await page.getByRole('radio', { name: /^Dark/ }).check();
  await expect(page.getByText('Kept on this device.')).toBeVisible();
  await page.reload();
  await expect(heading(page)).toHaveText('Settings');
  expect(await page.evaluate(() => getComputedStyle(document.documentElement).colorScheme)).toBe('dark');
});

test('a storage that refuses is told, and the app goes on', async ({ page }) => {
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('refused', 'SecurityError');
    };
  });
  await page.goto('/#/start');
  await page.reload();
  await expect(page.getByRole('alert')).toContainText('This browser lets nothing be kept');
  await page.getByRole('button', { name: 'Put this message away' }).click();
  await page.getByRole('radio', { name: /Hedge Lantern/ }).check();
  await page.getByRole('button', { name: 'begin this batch' }).click();
  await expect(page.getByRole('alert')).toContainText('Open the guide in an ordinary window');
});

test('a fault of ours is one calm sentence, and everything goes on', async ({ page, faults }) => {
  await page.evaluate(() => void Promise.reject(new Error('made up')));
  await expect(page.getByRole('alert')).toContainText('What you recorded is kept');
  expect(faults).toEqual(['uncaught: made up']);
  faults.length = 0;
  await page.getByRole('button', { name: 'Put this message away' }).click();
  await page.getByRole('link', { name: 'Start a batch' }).click();
  await expect(heading(page)).toHaveText('Start a batch');
});
