import { en } from '../../src/text/en';
import { BenchPage } from './bench';
import { broughtIn, makerOf } from './brought-in';
import { expect, test } from './fixtures';

const REFUSED = 'could not be fetched';
/** All words, and what the first act of a batch does not show. */
const REST = /\/assets\/(en|later-parts)-(?!bench)/;

// Nothing is kept for use without a network yet: this is the first visit.
test.beforeEach(({ page }) =>
  page.addInitScript(() => {
    ServiceWorkerContainer.prototype.register = () => new Promise(() => undefined);
  }),
);

test.afterEach(({ faults }) => {
  // The browser itself remarks on every file that did not come.
  faults.splice(0, faults.length, ...faults.filter((fault) => !/Failed to (fetch|load)/.test(fault)));
});

test.describe('where the network goes before the words of the batches have come', () => {
  test.beforeEach(async ({ page }) => {
    test.slow();
    await broughtIn(page, makerOf('hedge-lantern').goTo('ferment'));
    await page.route(/\/assets\/en-/, (route) => route.abort());
    await page.goto('/#/');
    await page.reload();
  });

  test('the opening screen says so, calls nothing broken, and asks again', async ({ page }) => {
    await expect(page.getByText(REFUSED)).toBeVisible();
    await expect(page.getByText('tripped')).toHaveCount(0);
    await expect(page.getByText('Nothing is started yet')).toHaveCount(0);
    await expect(page.getByRole('link', { name: 'Start a batch' })).toBeVisible();
    await page.unroute(/\/assets\/en-/);
    await page.getByRole('button', { name: 'Try again' }).click();
    await expect(page.getByRole('article')).toContainText('Shelf two');
    await expect(page.getByText(REFUSED)).toHaveCount(0);
  });
});

test('where the network goes with the first act, what was answered is kept, and the next act opens when it is back', async ({
  page,
}) => {
  const { notHere } = en.bench;
  await page.route(REST, (route) => route.abort());
  await page.goto('/');
  const bench = new BenchPage(page);
  await bench.begin(/Hedge Lantern/, 'Shelf two');
  await bench.heed();
  await bench.press(/^that is done/);
  await bench.press(/^yes it is/);
  await expect(bench.heading).toHaveText(notHere.title);
  await expect(page.getByText(notHere.notFetched).first()).toBeVisible();
  await bench.press(notHere.again);
  await expect(bench.heading).toHaveText(notHere.title);
  await page.unroute(REST);
  await bench.press(notHere.again);
  await expect(bench.heading).toHaveText(/hydrometer/);
  await expect(bench.heading).toBeFocused();
  await page.reload();
  await expect(bench.heading).toHaveText(/hydrometer/);
});

test('what comes behind the first act moves nothing that is being read, and leaves the focus where it is', async ({
  page,
}) => {
  let comes: () => void = () => undefined;
  const network = new Promise<void>((resolve) => (comes = resolve));
  await page.route(REST, async (route) => {
    await network;
    await route.continue();
  });
  await page.goto('/');
  const bench = new BenchPage(page);
  await bench.begin(/Hedge Lantern/, 'Shelf two');
  await bench.heed();
  await expect(bench.heading).toBeFocused();
  await page.evaluate(() => document.fonts.ready);
  await page.getByRole('checkbox').first().check();
  const stands = () =>
    Promise.all([bench.heading, bench.pad(/^that is done/)].map((each) => each.boundingBox()));
  const before = await stands();
  comes();
  await expect(page.getByText(en.bench.end.how)).toBeAttached();
  expect(await stands()).toEqual(before);
  await expect(page.getByRole('checkbox').first()).toBeFocused();
  await expect(page.getByRole('checkbox').first()).toBeChecked();
});

test('a batch under way whose bench did not come says so, and opens when it is asked for again', async ({
  page,
}) => {
  await broughtIn(page, makerOf('hedge-lantern').goTo('ferment'));
  await page.goto('/#/help');
  await page.route(/\/assets\/later-parts-/, (route) => route.abort());
  await page.reload();
  const { hash } = new URL(page.url());
  expect(hash).toBe('#/help');
  await page.goto('/#/');
  await page.getByRole('article').getByRole('link').first().click();
  await expect(page.getByText(REFUSED)).toBeVisible();
  await page.unroute(/\/assets\/later-parts-/);
  await page.goto('/#/');
  await page.getByRole('article').getByRole('link').first().click();
  await expect(page.getByRole('group', { name: en.bench.pressLabel })).toBeVisible();
});

test('a file that cannot be read for want of the network is not taken, and that is said', async ({
  page,
}) => {
  await page.goto('/');
  await page.route(/\/assets\/import-batch-/, (route) => route.abort());
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Bring in a batch file' }).click();
  await (await chooser).setFiles({ name: 'a.json', mimeType: 'application/json', buffer: Buffer.from('{}') });
  await expect(page.getByText(REFUSED)).toBeVisible();
  await expect(page.getByText('tripped')).toHaveCount(0);
});
