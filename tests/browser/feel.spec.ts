import type { Locator, Page } from '@playwright/test';
import { en } from '../../src/text/en';
import type { BenchPage } from './bench';
import { broughtIn, makerOf } from './brought-in';
import { expect, test } from './fixtures';

test.use({ timezoneId: 'UTC' });

const first = (page: Page): Locator => page.locator('.pads button:visible').first();

async function space(page: Page): Promise<void> {
  await expect(first(page)).toBeEnabled();
  await page.keyboard.press('Space');
}

/** A batch at two acts in a row that ask for nothing but the word that they are done. */
async function atTheGear(page: Page): Promise<BenchPage> {
  const maker = makerOf('hedge-lantern').goTo('clean');
  const bench = await broughtIn(page, maker);
  await bench.heed();
  await expect(bench.heading).toHaveText(/Wash/);
  return bench;
}

/** What moves right now. Runs in the page. */
const moving = () => document.getAnimations().filter(({ playState }) => playState === 'running').length;

/** Everything that moved within some seconds. */
async function movedDuring(page: Page, seconds: number): Promise<number> {
  let moved = 0;
  for (let looks = 0; looks < seconds * 5; looks += 1) {
    moved += await page.evaluate(moving);
    await page.waitForTimeout(200);
  }
  return moved;
}

test('the page turns from act to act; a key and a touch count once and at once while it does', async ({
  page,
}) => {
  const bench = await atTheGear(page);
  const session = await page.context().newCDPSession(page);
  await session.send('Animation.enable');
  await session.send('Animation.setPlaybackRate', { playbackRate: 0.005 });
  const turning = () =>
    page.evaluate(() =>
      document.getAnimations().some(({ effect }) => (effect as KeyframeEffect).target?.matches('.act')),
    );

  await space(page);
  await expect(bench.heading).toHaveText(/Rinse/);
  await expect.poll(turning).toBe(true);
  await space(page);
  await expect(bench.heading).not.toHaveText(/Rinse/);
  await expect.poll(turning).toBe(true);
  await bench.press(/^ready to continue/);
  await expect(bench.pad(/^ready to continue/)).toHaveCount(0);
  await expect(bench.heading).toHaveText(/^Mix the sanitiser/);
});

test('without motion no page turns, and nothing moves while a stir runs', async ({ page }) => {
  const bench = await broughtIn(page, makerOf('hedge-lantern').goTo('degas'));
  await bench.heed();
  await bench.press(/^start the clock/);
  await expect(page.getByRole('timer')).toBeVisible();
  expect(await movedDuring(page, 2), 'where motion is wanted, the spoon goes round').toBeGreaterThan(0);

  await page.emulateMedia({ reducedMotion: 'reduce' });
  await expect.poll(() => page.evaluate(moving)).toBe(0);
  expect(await movedDuring(page, 2)).toBe(0);
  await bench.wait(300 / 3600);
  await expect(bench.pad(/^that is done/)).toBeVisible();
  expect(await movedDuring(page, 1), 'nor when its time is up').toBe(0);
  await bench.press(/^that is done/);
  await expect(bench.pad(/^that is done/)).toHaveCount(0);
  expect(await page.evaluate(moving), 'nor does a page turn').toBe(0);
});

/** What has the focus: its words, whether it is seen whole or in part, and whether it is marked. Runs in the page. */
const focused = () => {
  const at = document.activeElement;
  if (!at || at === document.body) return 'nothing';
  const { top, bottom } = at.getBoundingClientRect();
  if (bottom <= 0 || top >= innerHeight) return 'out of sight';
  const { outlineStyle, outlineWidth } = getComputedStyle(at);
  if (outlineStyle === 'none' || outlineWidth === '0px') return 'not marked';
  return at.closest('main') ? 'in sight' : 'elsewhere';
};

const isSeen = (page: Page, where: string) =>
  expect.poll(() => page.evaluate(focused), { message: where }).toBe('in sight');

test('by keys, the focus is seen on the next act', async ({ page }) => {
  const bench = await atTheGear(page);
  await space(page);
  await expect(bench.heading).toHaveText(/Rinse/);
  await expect(bench.heading).toBeFocused();
  await isSeen(page, 'an act');
});

test('by keys, the focus is seen on what is asked back, and on the act after it', async ({ page }) => {
  const bench = await broughtIn(page, makerOf('hedge-lantern').goTo('fine'));
  await bench.heed();
  await page.getByRole('textbox').first().focus();
  await page.keyboard.type('21');
  await page.keyboard.press('Enter');
  await expect(bench.heading).toContainText('Right?');
  await isSeen(page, 'what is asked back');
  await space(page);
  await expect(bench.heading).not.toContainText('Right?');
  await isSeen(page, 'the act after it');
});

test('by keys, the focus is seen on a page of choice, and back on the gate', async ({ page }) => {
  const bench = await broughtIn(page, makerOf('hedge-lantern').goTo('proving clear').wait(24));
  await page.keyboard.press('Shift');
  await expect(bench.heading).toBeFocused();
  const choice = page.getByRole('button', { name: en.bench.otherWays.inSpiteOf }).first();
  await choice.focus();
  await page.keyboard.press('Enter');
  await expect(choice).toBeHidden();
  await isSeen(page, 'a page of choice');
  await page.keyboard.press('Escape');
  await expect(bench.heading).toHaveText('Not yet.');
  await isSeen(page, 'the gate');
});

/** Pads whose border or words cannot be told from what is behind them, be it the ground that forced colours lay behind words. Runs in the page. */
const lostPads = () => {
  const drawn = (colour: string) => !/^(transparent|rgba\(.*, 0\))$/.test(colour);
  const ground = getComputedStyle(document.documentElement).backgroundColor;
  return [...document.querySelectorAll<HTMLElement>('.pads button')]
    .filter((pad) => pad.checkVisibility())
    .filter((pad) => {
      const { borderTopStyle, borderTopWidth, borderTopColor, backgroundColor, color, forcedColorAdjust } =
        getComputedStyle(pad) as CSSStyleDeclaration & { forcedColorAdjust: string };
      const behind = drawn(backgroundColor) ? backgroundColor : ground;
      const bordered =
        borderTopStyle !== 'none' && parseFloat(borderTopWidth) >= 1 && borderTopColor !== ground;
      const isBlotted = forcedColorAdjust !== 'none' && color === ground;
      return !bordered || color === behind || isBlotted || pad.innerText.trim() === '';
    })
    .map((pad) => pad.innerText);
};

test('in forced colours the main pad keeps its border and its words', async ({ page }) => {
  await page.emulateMedia({ forcedColors: 'active' });
  await atTheGear(page);
  await expect(page.locator('.pads .main button')).toBeVisible();
  expect(await page.evaluate(lostPads)).toEqual([]);
});

test('in forced colours every pad of a gate keeps its border and its words', async ({ page }) => {
  await page.emulateMedia({ forcedColors: 'active' });
  const bench = await broughtIn(page, makerOf('hedge-lantern').goTo('proving clear').wait(24));
  await bench.held(/another day/);
  await expect(first(page)).toBeVisible();
  expect(await page.evaluate(() => document.querySelectorAll('.pads button').length)).toBeGreaterThan(3);
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ forcedColors: 'active', colorScheme });
    expect(await page.evaluate(lostPads), colorScheme).toEqual([]);
  }
});
