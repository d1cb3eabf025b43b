import type { Page } from '@playwright/test';
import { canBeTold } from '../../../src/procedure/can-be-told';
import { finishOf } from '../../../src/procedure/limits';
import { MISHAP_GROUPS, MISHAP_IDS } from '../../../src/procedure/mishap';
import { en } from '../../../src/text/en';
import { everywhere } from '../../story/everywhere';
import { Maker, type Wine } from '../../story/maker';
import { tellingsOf } from '../../story/telling';
import { BenchPage } from '../bench';
import { atTheSorbate, bringIn, broughtIn, makerOf } from '../brought-in';
import { expect, test } from '../fixtures';
import { EverySize } from './every-size';

test.use({ timezoneId: 'UTC' });

const { otherWays } = en.bench;
const { whatHappened, school } = en;

const unfold = async (page: Page) => {
  const folded = page.locator('details:not([open]) > summary:visible');
  while ((await folded.count()) > 0) await folded.first().click();
};

/** Looks at one screen after another, and tells at the end what was wrong with any. Axe looks at the first of each kind, and not at a glance. */
function eyes(page: Page, of: string) {
  const sizes = new EverySize(page, of);
  const glance = async (name: string, kind?: string) => {
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    await sizes.look(name, kind);
  };
  const look = (name: string, kind = name) => glance(name, kind);
  return { look, glance, found: () => expect(sizes.faults).toEqual({}) };
}

test.describe('at every size, by day and by night', () => {
  test.setTimeout(600_000);

  test('what stands beside the bench', async ({ page }) => {
    const { look, found } = eyes(page, 'beside the bench');
    const finished = makerOf('chalk-meadow').goTo('finished');
    await page.clock.install({ time: finished.now.at });
    await page.goto('/');
    await look('opening, empty');
    for (const screen of ['settings', 'help', 'safety', 'nowhere']) {
      await page.goto(`/#/${screen}`);
      await unfold(page);
      await look(screen);
    }
    await page.goto('/#/start');
    for (const kit of [/Hedge Lantern/, /Chalk Meadow/, /Ember Quay/]) {
      await page.getByRole('radio', { name: kit }).check();
      await unfold(page);
      await look(`start, ${kit.source}`, 'start');
    }
    await page.goto('/#/');
    await bringIn(page, finished, 'shelf-one');
    await look('a batch that is finished');
    await page.goto('/#/');
    await bringIn(page, makerOf('hedge-lantern').goTo('clear'), 'shelf-two');
    await page.goto('/#/');
    await look('opening, with two batches');
    for (const screen of ['journal', 'sums', 'labels']) {
      await page.goto(`/#/batch/shelf-two/${screen}`);
      await unfold(page);
      await look(screen);
    }
    found();
  });

  test('the meniscus school', async ({ page }) => {
    const { look, found } = eyes(page, 'school');
    await page.goto('/#/school');
    await look('before');
    await page.getByRole('button', { name: school.begin }).click();
    for (let round = 1; round <= 10; round += 1) {
      await expect(page.getByRole('heading', { level: 2 })).toHaveText(school.nth(String(round), '10'));
      await look(`round ${String(round)}`, 'round');
      await page.getByLabel(school.reading).fill(round % 2 === 0 ? '1.169' : '1.000');
      await page.getByLabel(school.reading).press('Enter');
      await expect(page.getByRole('main').getByRole('status')).toHaveText(/\d\.\d{3}\.$/);
      await look(`round ${String(round)}, answered`, 'answered');
      await page.keyboard.press('Enter');
    }
    await expect(page.getByLabel(school.reading)).toHaveCount(0);
    await look('after');
    found();
  });

  test('what may be chosen at a gate that is shut', async ({ page }) => {
    const { look, found } = eyes(page, 'choices');
    const { sheet, now } = makerOf('hedge-lantern');
    const heavy = (finishOf(sheet).limit + 30) / 10_000;
    const sweet: Wine = { gravityOn: (day) => Math.max(heavy, 1.067 - day * 0.008), celsius: 21 };
    const bench = await broughtIn(page, new Maker(sheet, sweet, now).goTo('proving dry'));
    await expect(bench.heading).toHaveText('Not yet.');
    await unfold(page);
    await look('shut, all unfolded');
    for (const way of [otherWays.whyNot, otherWays.sugarTest, otherWays.away]) {
      await bench.press(way);
      await unfold(page);
      await look(way);
      await page.keyboard.press('Escape');
      await expect(bench.heading).toHaveText('Not yet.');
    }
    await bench.press(/^new reading/);
    await unfold(page);
    await look('a new reading');
    found();
  });

  test('a gate that is passed in spite of a clause', async ({ page }) => {
    const { look, found } = eyes(page, 'in spite of');
    const bench = await broughtIn(page, makerOf('hedge-lantern').goTo('proving clear').wait(24));
    await bench.held(/another day/);
    await bench.press(otherWays.inSpiteOf);
    await look(otherWays.inSpiteOf);
    found();
  });

  test('a sachet left out', async ({ page }) => {
    const { look, found } = eyes(page, 'left out');
    const bench = await broughtIn(page, atTheSorbate());
    await bench.heed();
    await bench.press(/^leave out/);
    await look('leave out');
    found();
  });

  test('while the guide holds still, looks back, or tells where we are', async ({ page }) => {
    const { look, found } = eyes(page, 'held still');
    const bench = await broughtIn(page, atTheSorbate());
    await bench.heed();
    await bench.press(new RegExp(`^${en.guide.commands.wait[0] ?? ''}`));
    await look('wait');
    await bench.press(/^go on now/);
    await page.keyboard.press('PageUp');
    await look('back');
    await bench.press(/^go on now/);
    await bench.press(/^something went wrong/);
    await look('something went wrong');
    await bench.press(en.hands.mishap.interrupted);
    await look('where are we');
    found();
  });

  test('a batch that is joined, one whose dryness is in doubt, and one that is ended', async ({ page }) => {
    const { look, found } = eyes(page, 'seldom');
    const maker = makerOf('hedge-lantern').goTo('clear');
    const used = maker.facts.passed['proving dry']?.readings[0];
    maker.report({ type: 'reading struck', how: 'touch', entry: used!, reason: 'the jar was too warm' });
    const bench = await broughtIn(page, maker);
    await look('in doubt');
    await page.locator('summary', { hasText: 'End this batch' }).click();
    await page.getByRole('radio', { name: 'I go on without the guide' }).check();
    await page.getByLabel('Why, in your words').fill('I move house');
    await look('to be ended');
    await bench.press('end this batch');
    await look('ended');
    await page.goto('/#/');
    await new BenchPage(page).begin(/Hedge Lantern/, 'Shelf three');
    await bench.press(otherWays.join);
    await page.getByLabel(whatHappened.joining.reached).selectOption(en.places.clear);
    await look('joining');
    found();
  });

  test('a reading that is doubted, and read back', async ({ page }) => {
    const { look, found } = eyes(page, 'doubted');
    const bench = await broughtIn(page, makerOf('hedge-lantern').goTo('proving dry'));
    await bench.press(/^new reading/);
    await bench.read({ reading: '1.010' });
    await expect(bench.heading).toHaveText(/Is it right\?/);
    await look('doubted');
    found();
  });
});

/** Where each mishap can first be told. */
function firstPlaces() {
  const makers = [...everywhere(() => makerOf('hedge-lantern')).values()];
  return MISHAP_IDS.map((mishap) => {
    const maker = makers.find(
      (each) =>
        canBeTold(each.sheet, each.facts, each.place).includes(mishap) && tellingsOf(each, mishap).length > 0,
    );
    if (!maker) throw new Error(`${mishap} can be told nowhere`);
    return { mishap, maker };
  });
}

const FIRST_OF_A_GROUP = new Set(Object.values(MISHAP_GROUPS).map(([first]) => first));

for (const { mishap, maker } of firstPlaces())
  test(`at every size: ${mishap}, to be told, read back and told`, async ({ page }) => {
    test.setTimeout(300_000);
    const { look, glance, found } = eyes(page, `mishap ${mishap}`);
    const see = FIRST_OF_A_GROUP.has(mishap) ? look : glance;
    const bench = await broughtIn(page, maker);
    await bench.press(/^something went wrong/);
    await bench.press(whatHappened.mishaps[mishap].title);
    await expect(bench.heading).toHaveText(whatHappened.mishaps[mishap].title);
    await see('to be told');
    const [telling] = tellingsOf(maker, mishap);
    const { printed } = maker.sheet.sachets.find(({ id }) => id === telling?.sachet) ?? {};
    if (printed !== undefined) await page.getByRole('radio', { name: printed }).check();
    if (telling?.litres !== undefined)
      await page.locator('.hand input[inputmode="decimal"]').first().fill(String(telling.litres));
    await bench.press(whatHappened.tellIt);
    await expect(bench.heading).toContainText('Right?');
    await see('read back');
    await bench.yes();
    await see('told');
    found();
  });
