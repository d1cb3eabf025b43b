import { en } from '../../src/text/en';
import { BenchPage } from './bench';
import { expect, test } from './fixtures';
import { violations } from './violations';

test.use({ timezoneId: 'UTC' });

const { joining } = en.whatHappened;

test('a batch joined in its ferment is judged by a live reading beside the past ones', async ({ page }) => {
  test.setTimeout(120_000);
  await page.clock.install({ time: new Date('2031-05-24T15:00:00Z') });
  await page.goto('/');
  const bench = new BenchPage(page);
  await bench.begin(/Hedge Lantern/, 'Shelf two');
  await bench.press(en.bench.otherWays.join);
  expect(await violations(page)).toEqual([]);
  await page.getByLabel(joining.since).fill('2031-05-03');
  await page.getByLabel(joining.reached).selectOption(en.places.ferment);
  await page.getByLabel(joining.litres).fill('23');
  const yeast = page.getByRole('group', { name: 'Wine yeast' });
  await yeast.getByText(joining.sachet.in).click();
  await page.getByLabel(joining.day).fill('2031-05-03');
  await bench.press(joining.join);
  await expect(page.getByRole('heading', { level: 1 })).not.toHaveText(joining.title);
  await expect(page).toHaveTitle(/Shelf two:/);

  await bench.act(/foam/i, () => bench.press(/^Yes, foam/));
  await bench.act(/hydrometer/i, () => bench.hydrometer('0.001'));
  await bench.heed();
  await bench.press(/^new reading/);
  await page.getByText('It was taken earlier').click();
  await page.getByLabel(/When/).fill('2031-05-20T18:00');
  await bench.read({ reading: '0.994' });
  await bench.read({ reading: '0.994' });
  await bench.goOn('It is finished.');
});
