import type { Page } from '@playwright/test';
import { anotherHydrometer } from '../story/persevere';
import { BenchPage, type Told } from './bench';
import { broughtIn, makerOf } from './brought-in';
import { expect, test } from './fixtures';
import { violations } from './violations';

/** 15:00 on a Saturday, in a place without summer time, so that hours are hours. */
const START = new Date('2031-05-03T15:00:00Z');
test.use({ timezoneId: 'UTC' });

/** Unboxing, cleaning, mixing and the yeast. */
async function untilYeast(bench: BenchPage): Promise<void> {
  await bench.act(/./, () => bench.allThere());
  await bench.act(/hydrometer/i, () => bench.hydrometer('0.001'));
  await bench.act(/./, () => bench.number(/full to the brim/, '30'));
  for (let acts = 0; acts < 4; acts += 1) await bench.act(/./);
  await bench.byTheClock(/./, 600);
  await bench.act(/./);
  await bench.act(/./);
  await bench.act(/./, () => bench.sachet('Bentonite, first in'));
  await bench.byTheClock(/./, 120);
  await bench.act(/./);
  await bench.act(/./);
  await bench.act(/./, () => bench.number(/surface stands now/, '23'));
  await bench.byTheClock(/./, 240);
  await bench.act(/gravity/i, () => bench.read({ reading: '1.067' }));
  await bench.goOn('It is mixed.');
  await bench.act(/./, () => bench.number(/Warmth of the must/, '21'));
  await bench.act(/./, () => bench.sachet('Wine yeast'));
  await bench.act(/./);
}

/** Day 1 to the dryness gate: alive, a reading on day 5, and the two readings that the schedule asks for. */
async function untilGate(bench: BenchPage): Promise<void> {
  await bench.wait(27);
  await bench.act(/foam/i, () => bench.press(/^Yes, foam/));
  await bench.wait(4 * 24);
  await bench.act(/gravity/i, () => bench.read({ reading: '1.031' }));
  await bench.wait(5 * 24);
  await bench.act(/gravity/i, () => bench.read({ reading: '0.994' }));
  await bench.wait(48.5);
  await bench.read({ reading: '994' });
}

test('the light fruit wine, from unboxing to laid down, on a phone', async ({ page }) => {
  test.setTimeout(180_000);
  await page.setViewportSize({ width: 390, height: 844 });
  await page.clock.install({ time: START });
  await page.goto('/');
  const bench = new BenchPage(page);
  await bench.begin(/Hedge Lantern/, 'Shelf two');
  await untilYeast(bench);
  await untilGate(bench);
  await bench.goOn('It is finished.');

  await bench.act(/Draw off/);
  await bench.act(/second vessel/, () => bench.number(/second vessel holds/, '25'));
  await bench.act(/Sanitise/);
  await bench.act(/Siphon/);
  await bench.act(/Measure/, () => bench.number(/wine arrived/, '20.4'));
  await bench.act(/Knock/, () => bench.press(/^No, it stayed calm/));
  await bench.act(/Take every stabiliser/, () => bench.allThere());
  await bench.act(/./, () => bench.sachet('Metabisulphite'));
  await bench.byTheClock(/./, 30);
  await bench.act(/./, () => bench.sachet('Potassium sorbate, stabiliser'));
  await page.reload();
  await bench.byTheClock(/./, 120);
  await bench.byTheClock(/gas/i, 300);
  await bench.byTheClock(/./, 300);
  await bench.held(/test/i);
  for (let tests = 0; tests < 2; tests += 1) {
    await bench.quietGasTest();
  }
  await bench.goOn('The gas is out.');
  await bench.act(/./, () => bench.number(/Warmth of the wine/, '21'));
  await bench.act(/./, () => bench.sachet('Fruit sweetening pack'));
  await bench.byTheClock(/./, 60);
  await bench.act(/./, () => bench.sachet('Finings, fish'));
  await bench.byTheClock(/./, 20);
  await bench.act(/./);
  await bench.act(/./, () => bench.number(/topped up with/, '0'));
  await bench.act(/./, () => bench.number(/up to the stopper/, '25'));
  await bench.act(/gravity/i, () => bench.read({ reading: '1.001' }));
  await bench.act(/./);

  await bench.wait(15 * 24 + 2);
  await bench.act(/./, () => bench.press(/^Yes, it is clear/));
  await bench.held(/day/i);
  await bench.wait(24);
  await bench.looksClear();
  await bench.goOn('It is bright.');
  await bench.readAtGate({ reading: '1.001' });
  for (let tests = 0; tests < 2; tests += 1) {
    await bench.quietGasTest();
  }
  await bench.goOn('It is still.');
  await bench.act(/./, async () => {
    await page.getByLabel('Bottles, sound and clean').fill('32');
    await page.getByLabel('Closures to go with them').fill('34');
    await page
      .getByRole('group', { name: /screw thread/ })
      .getByRole('radio', { name: 'No', exact: true })
      .check();
    await bench.readBack();
  });
  await bench.act(/./);
  await bench.act(/Fill/, async () => {
    await bench.press(/^that is done/);
    await bench.yes();
  });
  await bench.act(/./, () => bench.number(/Bottles filled/, '29'));
  await bench.wait(24);
  await bench.act(/./);
  await bench.act(/[Ll]abel/);
  await bench.act(/Wash/);
  await bench.act(/[Ll]ay/);
  await expect(page.getByText(/Next, in/)).toBeVisible();
});

/** The two readings that the schedule asks for, on their days, in a batch that ferments since unboxing. */
async function twoReadings(
  page: Page,
  first: Told,
  second: Told,
  division: 10 | 20 = 10,
): Promise<BenchPage> {
  const maker = makerOf('hedge-lantern').goTo('ferment');
  if (division === 20) maker.report({ ...anotherHydrometer, division });
  while (maker.act?.step !== 'read towards dry') maker.answer();
  maker.waitUntil(maker.act.due ?? maker.now.at);
  const bench = await broughtIn(page, maker);
  await bench.act(/gravity/i, () => bench.read(first));
  await bench.wait(48.5);
  await bench.read(second);
  return bench;
}

test.describe('is held at the dryness gate', () => {
  test.slow();

  test('at 1.010, with the reason and the earliest time', async ({ page }) => {
    const bench = await twoReadings(page, { reading: '1.012' }, { reading: '1.010' });
    await bench.held(/1\.010/);
    await expect(page.getByText('Earliest', { exact: false }).first()).toBeVisible();
    await expect(page.getByText(/Saturday 17 May/).first()).toBeVisible();
    expect(await violations(page)).toEqual([]);
    for (const [width, height] of [
      [390, 844],
      [844, 390],
      [1024, 768],
    ] as const) {
      await page.setViewportSize({ width, height });
      await bench.held(/1\.010/);
    }
    await expect(page.getByRole('alert')).toHaveCount(0);
  });

  test('on 0.994 once, and twice 47 hours apart; at 49 it opens', async ({ page }) => {
    const bench = await twoReadings(page, { reading: '1.010' }, { reading: '0.994' });
    await bench.held(/1\.010/);
    await bench.wait(47);
    await bench.readAtGate({ reading: '0.994' });
    await bench.held(/was 1\.010; each one that counts/);
    await bench.wait(2);
    await bench.readAtGate({ reading: '0.994' });
    await bench.goOn('It is finished.');
  });

  test('on a fall that a scale of 0.002 cannot tell', async ({ page }) => {
    const bench = await twoReadings(page, { reading: '0.996' }, { reading: '0.9945' }, 20);
    await bench.held(/tell/);
  });

  test('on equal readings whose samples were not equally warm, whichever came first', async ({ page }) => {
    const warm = { reading: '0.994', sample: '27' };
    const bench = await twoReadings(page, warm, { reading: '0.994', sample: '20' });
    await bench.held(/still at work/);
    await bench.wait(49);
    await bench.readAtGate(warm, /higher than the last\. Is it right\?/);
    await bench.held(/The reading rose by/);
    await bench.wait(49);
    await bench.readAtGate(warm);
    await bench.goOn('It is finished.');
  });

  test('in wine at 15 °C', async ({ page }) => {
    const bench = await twoReadings(page, { reading: '1.010' }, { reading: '0.994' });
    await bench.wait(49);
    await bench.readAtGate({ reading: '0.994', wine: '15' });
    await bench.held(/15 °C/);
  });
});
