import type { Page } from '@playwright/test';
import { en } from '../../src/text/en';
import type { Mishap } from '../../src/procedure/mishap';
import type { Maker } from '../story/maker';
import type { BenchPage } from './bench';
import { atTheSorbate, broughtIn, makerOf } from './brought-in';
import { expect, test } from './fixtures';
import { violations } from './violations';

test.use({ timezoneId: 'UTC' });

const { mishaps, told } = en.whatHappened;

/** A maker who tells what went wrong with the keys alone. */
class Keys {
  constructor(
    readonly page: Page,
    readonly bench: BenchPage,
  ) {}

  async tabTo(name: string): Promise<void> {
    for (let tabs = 0; tabs < 80; tabs += 1) {
      await this.page.keyboard.press('Tab');
      const label = await this.page.evaluate(() => {
        const at = document.activeElement;
        return (
          at?.closest('label')?.textContent.trim() ??
          (at instanceof HTMLInputElement ? at.labels?.[0]?.textContent.trim() : at?.textContent.trim())
        );
      });
      if (label?.startsWith(name)) return;
    }
    throw new Error(`the keyboard never came to ${name}`);
  }

  async open(): Promise<void> {
    await this.tabTo('something went wrong');
    await this.page.keyboard.press('Enter');
    await expect(this.bench.heading).toHaveText(en.hands.mishap.title);
  }

  async tell(mishap: Mishap, details: { sachet?: string; litres?: string }): Promise<void> {
    await this.open();
    await this.tabTo(mishaps[mishap].title);
    await this.page.keyboard.press('Enter');
    await expect(this.bench.heading).toHaveText(mishaps[mishap].title);
    if (details.sachet !== undefined) {
      await this.page.getByRole('radio', { name: details.sachet }).focus();
      await this.page.keyboard.press('Space');
    }
    if (details.litres !== undefined) {
      await this.tabTo('How many litres');
      await this.page.keyboard.type(details.litres);
    }
    await this.page.keyboard.press('PageDown');
    await expect(this.bench.heading).toContainText('Right?');
    await expect(this.bench.pad(/^yes it is/)).toBeEnabled();
    await this.page.keyboard.press('PageDown');
    await expect(this.page.getByText(told)).toBeVisible();
    for (const line of mishaps[mishap].now) await expect(this.page.getByText(line).first()).toBeVisible();
    await this.page.keyboard.press('PageDown');
    await expect(this.bench.heading).not.toHaveText(mishaps[mishap].title);
  }
}

type Telling = [mishap: Mishap, details?: { sachet?: string; litres?: string }];

const SCENES: [where: string, maker: () => Maker, tellings: Telling[]][] = [
  [
    'while it ferments',
    () => makerOf('hedge-lantern').goTo('ferment'),
    [
      ['silent airlock'],
      ['foamed over', { litres: '0.5' }],
      ['too cold'],
      ['stabiliser too early', { sachet: 'Metabisulphite' }],
    ],
  ],
  [
    'between two stabilisers',
    atTheSorbate,
    [['wine spilled', { litres: '1' }], ['hydrometer broken'], ['wrong sachet', { sachet: 'Finings, fish' }]],
  ],
  [
    'in its bottles',
    () => makerOf('hedge-lantern').goTo('rest'),
    [['bottle broke'], ['closures rising'], ['crystals']],
  ],
];

for (const [where, maker, tellings] of SCENES)
  test(`what went wrong ${where} is told by keys, read back, and kept over a reload`, async ({ page }) => {
    test.setTimeout(150_000);
    const bench = await broughtIn(page, maker());
    const keys = new Keys(page, bench);
    for (const [mishap, details = {}] of tellings) await keys.tell(mishap, details);
    await page.reload();
    await page.goto(`${page.url()}/journal`);
    for (const [mishap] of tellings)
      await expect(page.getByText(mishaps[mishap].entry, { exact: false }).first()).toBeVisible();
  });

test('the list and a mishap are sound to axe', async ({ page }) => {
  const bench = await broughtIn(page, makerOf('hedge-lantern').goTo('ferment'));
  await bench.press(/^something went wrong/);
  expect(await violations(page)).toEqual([]);
  await bench.press(mishaps['stabiliser too early'].title);
  expect(await violations(page)).toEqual([]);
});
