import type { Page } from '@playwright/test';
import type { BenchPage } from './bench';
import { broughtIn, makerOf } from './brought-in';
import { expect, test } from './fixtures';
import { spokenOn } from './spoken';

test.use({ timezoneId: 'UTC' });

/** A pedal with two treads, and a few digits typed in a dry moment: nothing is pressed on the glass. */
class Pedal {
  constructor(
    readonly page: Page,
    readonly bench: BenchPage,
  ) {}

  get #first() {
    return this.page.locator('.pads button:visible').first();
  }

  /** One tread, when the guide has said what it had to say; then something else is on the screen. */
  async tread(key: 'PageDown' | 'PageUp' = 'PageDown'): Promise<void> {
    await expect(this.#first).toBeEnabled();
    const before = await this.page.locator('main').innerText();
    await this.page.keyboard.press(key);
    await expect.poll(() => this.page.locator('main').innerText()).not.toBe(before);
  }

  async #asked(words: RegExp | string): Promise<void> {
    await expect(this.bench.heading).toContainText(words);
  }

  async #heed(): Promise<void> {
    await expect(this.#first).toBeEnabled();
    if (/^ready to continue/.test(await this.#first.innerText())) await this.tread();
  }

  async done(heading: RegExp): Promise<void> {
    await this.#heed();
    await this.#asked(heading);
    await this.tread();
  }

  /** Done, and asked back. */
  async doneAndRight(heading: RegExp): Promise<void> {
    await this.done(heading);
    await this.#asked('Right?');
    await this.tread();
  }

  async no(heading: RegExp): Promise<void> {
    await this.#heed();
    await this.#asked(heading);
    await this.tread('PageUp');
    await this.#asked('Right?');
    await this.tread();
  }

  async stir(heading: RegExp, seconds: number): Promise<void> {
    await this.done(heading);
    await expect(this.page.getByRole('timer')).toBeVisible();
    await this.bench.wait(seconds / 3600);
    await expect(this.bench.pad(/^that is done/)).toBeVisible();
    await this.tread();
  }

  /** A number, typed: by Tab to its field, and Enter. */
  async types(heading: RegExp, ...values: string[]): Promise<void> {
    await this.#heed();
    await this.#asked(heading);
    await this.page.locator('body').press('Home');
    for (const value of values) {
      for (let tabs = 0; tabs < 20; tabs += 1) {
        await this.page.keyboard.press('Tab');
        if (await this.page.evaluate(() => document.activeElement?.matches('input[type=text]'))) break;
      }
      await this.page.keyboard.type(value);
    }
    await this.page.keyboard.press('Enter');
    await this.#asked('Right?');
    await this.tread();
  }
}

test('stabilising, stirring out the gas, sweetening and fining, by keys alone and by ear', async ({
  page,
}) => {
  test.setTimeout(180_000);
  const bench = await broughtIn(page, makerOf('hedge-lantern').goTo('stabilise'));
  const pedal = new Pedal(page, bench);
  await pedal.types(/Draw off/, '20');
  await pedal.no(/Knock/);
  await pedal.doneAndRight(/Take every stabiliser/);
  await pedal.doneAndRight(/Add .Metabisulphite/);
  await pedal.stir(/Stir .Metabisulphite/, 30);
  await pedal.doneAndRight(/Add .*sorbate/);
  await pedal.stir(/Stir .*sorbate/, 120);
  await pedal.stir(/gas/i, 300);
  await pedal.stir(/gas|Stir/i, 300);
  await pedal.no(/Not yet/);
  await pedal.no(/Not yet/);
  await pedal.done(/The gas is out/);
  await pedal.types(/temperature/, '21');
  await pedal.doneAndRight(/sweetening/i);
  await pedal.stir(/Stir/, 60);
  await pedal.doneAndRight(/Finings/i);
  await pedal.stir(/Stir/, 20);
  await pedal.done(/reserve|Return|back/i);
  await pedal.types(/just below its stopper/, '0');
  await expect(bench.heading).toContainText(/up to the stopper/i);

  const { lines, captions } = await spokenOn(page);
  expect(lines.filter((line) => !captions.some((shown) => shown.includes(line)))).toEqual([]);
});
