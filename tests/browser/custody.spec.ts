import { en } from '../../src/text/en';
import { broughtIn, makerOf } from './brought-in';
import { expect, test } from './fixtures';

test.use({ timezoneId: 'UTC', permissions: ['clipboard-read', 'clipboard-write'] });

const { wrappers } = en;
const { mishaps, told } = en.whatHappened;

test('a wrapper that is missing leads to its sachet, and the sachet gets its turn again', async ({
  page,
}) => {
  const maker = makerOf('hedge-lantern').goTo('ferment');
  const bench = await broughtIn(page, maker);
  await bench.press(wrappers.differ);
  await bench.press(wrappers.tooFew.which('Wine yeast'));
  await expect(bench.heading).toHaveText(mishaps['sachet still full'].title);
  await expect(page.getByRole('radio', { name: 'Wine yeast' })).toBeChecked();
  await bench.press(/^tell it/);
  await bench.yes();
  await expect(page.getByText(told)).toBeVisible();
  await bench.press(/^go on now/);
  await expect(page).toHaveTitle(new RegExp(en.places.pitch));
});

test('the digest is on the clipboard, word for word, from the journal', async ({ page }) => {
  await broughtIn(page, makerOf('hedge-lantern').goTo('ferment'));
  await page.goto('/#/batch/shelf-two/journal');
  await page.getByText(en.digest.title).click();
  await page.getByRole('button', { name: en.digest.copy }).click();
  await expect(page.getByText(en.digest.copied)).toBeVisible();
  const shown = await page.getByLabel(en.digest.says).inputValue();
  expect(shown).toMatch(/^Hedge Lantern/);
  expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(shown);
});
