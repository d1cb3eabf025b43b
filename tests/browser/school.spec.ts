import { en } from '../../src/text/en';
import { expect, test } from './fixtures';
import { violations } from './violations';

const { school } = en;

test('a hydrometer is read by keys alone, and nothing bars the way', async ({ page }) => {
  await page.goto('/#/help');
  await page.getByRole('link', { name: school.link }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(school.title);
  await page.getByRole('button', { name: school.begin }).focus();
  await page.keyboard.press('Enter');
  const nth = page.getByRole('heading', { level: 2 });
  await expect(nth).toHaveText(school.nth('1', '10'));
  expect(await violations(page)).toEqual([]);
  for (const _ of [1, 2]) {
    await page.getByLabel(school.reading).focus();
    await page.keyboard.type('1.169');
    await page.keyboard.press('Enter');
    await expect(page.getByRole('main').getByRole('status')).toHaveText(/reads \d\.\d{3}\.$/);
    expect(await violations(page)).toEqual([]);
    await page.keyboard.press('Enter');
  }
  await expect(nth).toHaveText(school.nth('3', '10'));
});
