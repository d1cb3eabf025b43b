import type { Locator, Page } from '@playwright/test';
import type { Instant } from '../../src/domain/unit';
import { en } from '../../src/text/en';
import { Maker, type Wine } from '../story/maker';
import type { BenchPage } from './bench';
import { broughtIn, makerOf } from './brought-in';
import { expect, test } from './fixtures';
import { layoutFaults } from './nightly/layout-faults';
import { violations } from './violations';

test.use({ timezoneId: 'UTC', hasTouch: true });

/** One file for what is read from afar, one for the rest. */
const LETTERS = 2;

/** Whole, but for a fraction of a pixel. */
const WHOLE = 0.99;

/** Our own letters come with the first touch, a little later on a busy machine, and move what is read. */
const lettered = (page: Page) =>
  expect
    .poll(() => page.evaluate(() => [...document.fonts].filter(({ status }) => status === 'loaded').length))
    .toBeGreaterThanOrEqual(LETTERS);

/** A wine that takes its time: on the day when its sheet would have it finished it still ferments. */
async function atTheShutGate(page: Page): Promise<BenchPage> {
  const slow: Wine = { gravityOn: (day) => 0.994 + 0.074 * Math.exp(-day / 6), celsius: 21 };
  const begun = { at: Date.UTC(2031, 4, 3, 15) as Instant, offsetMinutes: 0 };
  const { sheet } = makerOf('hedge-lantern');
  const bench = await broughtIn(page, new Maker(sheet, slow, begun).goTo('proving dry'));
  await expect(bench.heading).toHaveText('Not yet.');
  await lettered(page);
  return bench;
}

const answers = (page: Page) => ({
  'not yet': page.getByRole('heading', { name: 'Not yet.' }),
  'the clause that fails': page.getByText(/^The wine reads 1\.\d+ and must read/),
  'the number line': page.getByRole('img', { name: /^Number line/ }),
  'the earliest time': page.locator('dl time'),
  'what to do tonight': page.getByText(/Keep it warm and read again tomorrow/).first(),
});

/** A knuckle on it, where it is: the page is not moved for it. */
async function tap(page: Page, pad: Locator): Promise<void> {
  const { x, y, width, height } = (await pad.boundingBox())!;
  await page.touchscreen.tap(x + width / 2, y + height / 2);
}

const inSight = async (page: Page, names: readonly (keyof ReturnType<typeof answers>)[]) => {
  for (const name of names) await expect(answers(page)[name], name).toBeInViewport({ ratio: WHOLE });
};

for (const [name, width, height] of [
  ['phone', 390, 844],
  ['tablet', 1024, 768],
  ['tablet upright', 768, 1024],
] as const)
  test(`on a ${name} the shut gate tells at a glance all that it has to say`, async ({ page }) => {
    await page.setViewportSize({ width, height });
    await atTheShutGate(page);
    await inSight(page, [
      'not yet',
      'the clause that fails',
      'the number line',
      'the earliest time',
      'what to do tonight',
    ]);
    expect(await layoutFaults(page)).toEqual([]);
  });

for (const [name, width, height] of [
  ['low phone', 360, 740],
  ['small phone', 320, 640],
  ['phone on its side', 844, 390],
] as const)
  test(`on a ${name} the shut gate shows its clause and the line first, and leads to the rest`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height });
    await atTheShutGate(page);
    await inSight(page, ['not yet', 'the clause that fails']);
    await expect(answers(page)['the number line']).toBeInViewport({ ratio: 0.85 });
    expect(await layoutFaults(page)).toEqual([]);
    await tap(page, page.locator('.sign button'));
    await inSight(page, ['the earliest time', 'what to do tonight']);
  });

test('where a page holds more than it shows there is a sign of it, until its end is in sight', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await atTheShutGate(page);
  const sign = page.locator('.sign');
  await expect(sign).toBeVisible();
  const pads = page.locator('.pads');
  const before = await pads.boundingBox();
  await page.locator('.act').evaluate((act) => {
    act.scrollTo({ top: act.scrollHeight });
  });
  await expect(sign).toBeHidden();
  expect(await pads.boundingBox(), 'the pads stay where they are').toEqual(before);
});

test('what shows all that it holds is no band that moves, to axe either', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  const maker = makerOf('hedge-lantern');
  while (maker.act?.step !== 'choose a place') maker.answer();
  const bench = await broughtIn(page, maker);
  await bench.heed();
  expect(await violations(page)).toEqual([]);
});

test('a warning that is longer than its frame has a sign of it, however little longer', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await broughtIn(page, makerOf('hedge-lantern').goTo('degas'));
  expect(await layoutFaults(page)).toEqual([]);
});

test('seven sachets are asked back in words that stand clear of the pads', async ({ page }) => {
  const bench = await broughtIn(page, makerOf('hedge-lantern'));
  await bench.press(/^that is done/);
  await expect(bench.heading).toContainText('Right?');
  for (const [width, height] of [
    [390, 844],
    [360, 740],
    [768, 1024],
    [1024, 768],
  ] as const) {
    await page.setViewportSize({ width, height });
    await expect(bench.heading, `${String(width)} px wide`).toBeInViewport({ ratio: WHOLE });
    expect(await layoutFaults(page)).toEqual([]);
  }
});

test('the lines of the measuring coach can be opened beneath the hydrometer, all of them', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  const maker = makerOf('hedge-lantern').goTo('mix');
  while (maker.act?.kind !== 'reading') maker.answer();
  const bench = await broughtIn(page, maker);
  await bench.heed();
  expect(await layoutFaults(page)).toEqual([]);
  const last = page.getByRole('link', { name: en.school.link });
  await last.scrollIntoViewIfNeeded();
  await expect(last).toBeInViewport({ ratio: WHOLE });
  await expect(bench.pad(/^new reading/)).toBeInViewport({ ratio: WHOLE });
});

test('what went wrong is asked back and told from its first line, and can be moved by keys', async ({
  page,
}) => {
  await page.setViewportSize({ width: 320, height: 640 });
  const { mishaps, tellIt } = en.whatHappened;
  const bench = await broughtIn(page, makerOf('hedge-lantern').goTo('ferment'));
  await bench.press(/^something went wrong/);
  await bench.press(mishaps['wrong sachet'].title);
  await page.getByRole('radio').first().check();
  await bench.press(tellIt);
  await expect(bench.heading).toContainText('Right?');
  expect(await violations(page)).toEqual([]);
  await page.setViewportSize({ width: 390, height: 844 });
  await bench.yes();
  await expect(bench.heading).toBeFocused();
  await expect(bench.heading).toBeInViewport({ ratio: WHOLE });
});
