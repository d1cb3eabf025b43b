import { finishOf } from '../../src/procedure/limits';
import { en } from '../../src/text/en';
import { Maker } from '../story/maker';
import { atTheSorbate, broughtIn, makerOf } from './brought-in';
import { expect, test } from './fixtures';
import { violations } from './violations';

test.use({ timezoneId: 'UTC' });
test.slow();

const { override } = en;
const { otherWays } = en.bench;
const WHY = 'Guests are coming on Sunday';

test('a look too few yields to a typed reason, which stays in the journal and on the labels', async ({
  page,
}) => {
  const bench = await broughtIn(page, makerOf('hedge-lantern').goTo('proving clear').wait(24));
  await bench.held(/another day/);
  await bench.press(otherWays.inSpiteOf);
  expect(await violations(page)).toEqual([]);
  await bench.press(override.goOn);
  await expect(page.getByText(/needs a reason in your own words/)).toBeVisible();
  await page.getByLabel('Why without looking on two days?').fill(WHY);
  await bench.press(override.goOn);
  await expect(bench.heading).toHaveText('It is bright.');
  await page.reload();
  const decided = page.getByText(override.afterwards('not-looked-at', WHY)).first();
  await expect(decided).toBeVisible();

  const { hash } = new URL(page.url());
  await page.goto(`/${hash}/journal`);
  await expect(page.getByText(WHY).first()).toBeVisible();
  await page.getByRole('link', { name: en.bench.nav.labels }).click();
  await expect(page.getByRole('article').first()).toContainText(WHY);
  expect(await violations(page)).toEqual([]);
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByRole('article').first()).toBeVisible();
  await expect(page.getByRole('button', { name: en.labels.print })).toBeHidden();
});

test('the limit yields to no reason, and to a sugar test that is read back', async ({ page }) => {
  const sheet = makerOf('hedge-lantern').sheet;
  const heavy = (finishOf(sheet).limit + 30) / 10_000;
  const wine = { gravityOn: (day: number) => Math.max(heavy, 1.067 - day * 0.008), celsius: 21 };
  const begun = makerOf('hedge-lantern').now;
  const bench = await broughtIn(page, new Maker(sheet, wine, begun).goTo('proving dry'));
  await expect(bench.heading).toHaveText('Not yet.');
  await expect(bench.pad(new RegExp(otherWays.inSpiteOf))).toHaveCount(0);
  await bench.press(otherWays.whyNot);
  expect(await violations(page)).toEqual([]);
  await page.keyboard.press('Escape');
  await bench.press(otherWays.sugarTest);
  await page.getByLabel('Sugar that the test shows').fill('6');
  await bench.readBack();
  await expect(bench.heading).toHaveText('Not yet.');
  await bench.press(otherWays.sugarTest);
  await page.getByLabel('Sugar that the test shows').fill('1,5');
  await bench.readBack();
  await expect(bench.heading).toHaveText('It is finished.');
});

test('without its sorbate a wine is held to the lower limit, and is never sweetened', async ({ page }) => {
  const bench = await broughtIn(page, atTheSorbate());
  await bench.heed();
  await bench.press(/^leave out/);
  await expect(page.getByText(/nothing sweet goes in/).first()).toBeVisible();
  await page.getByLabel('Why leave it out?').fill('It gives me a headache');
  await bench.press('leave it out for good');
  await expect(bench.heading).not.toContainText('sorbate');
  await page.goto(`${page.url()}/journal`);
  await expect(page.getByText('It gives me a headache').first()).toBeVisible();
});

test('an absence is refused where the wine cannot wait, and moves the next act where it can', async ({
  page,
}) => {
  const maker = makerOf('hedge-lantern').goTo('ferment');
  while (maker.act?.step !== 'read towards dry') maker.answer();
  const bench = await broughtIn(page, maker);
  await bench.press(otherWays.away);
  expect(await violations(page)).toEqual([]);
  const day = (days: number) => new Date(maker.now.at + days * 86_400_000).toISOString().slice(0, 10);
  await page.getByLabel('Away from').fill(day(1));
  await page.getByLabel('Back on').fill(day(40));
  await expect(page.getByText(/A ferment may be left for 14 days/)).toBeVisible();
  await expect(bench.pad(/plan it so/)).toBeDisabled();
  await page.getByLabel('Back on').fill(day(9));
  await bench.press('plan it so');
  await expect(page.getByText(/^Away from/)).toBeVisible();
  await page.reload();
  await expect(page.getByText(/^Away from/)).toBeVisible();
});

test('a reading that is struck behind the gate is said to leave the dryness in doubt', async ({ page }) => {
  const maker = makerOf('hedge-lantern').goTo('clear');
  const used = maker.facts.passed['proving dry']?.readings[0];
  maker.report({ type: 'reading struck', how: 'touch', entry: used!, reason: 'the jar was too warm' });
  await broughtIn(page, maker);
  await expect(page.getByText(/in doubt/i).first()).toBeVisible();
  expect(await violations(page)).toEqual([]);
});

test('whoever goes on alone sees the card, and the batch says so for good', async ({ page }) => {
  const bench = await broughtIn(page, makerOf('hedge-lantern').goTo('proving dry'));
  await page.locator('summary', { hasText: 'End this batch' }).click();
  await page.getByRole('radio', { name: 'I go on without the guide' }).check();
  await expect(page.getByText(/Keep it cold, upright and contained/)).toBeVisible();
  await page.getByLabel('Why, in your words').fill('I move house');
  await bench.press('end this batch');
  await expect(bench.heading).toHaveText('Went on without the guide');
  await page.reload();
  await expect(bench.heading).toHaveText('Went on without the guide');
});
