import { expect, type Page } from '@playwright/test';

const HOUR = 3_600_000;

export type Told = {
  reading: string;
  sample?: string;
  wine?: string;
  degassed?: boolean;
};

/** How many records the app's own storage holds: each event of a journal is one. Runs in the page. */
const howMuchIsKept = (): Promise<number> =>
  new Promise((resolve, reject) => {
    const opening = indexedDB.open('fallbright');
    opening.onerror = () => {
      reject(new Error('the storage did not open'));
    };
    opening.onsuccess = () => {
      const counting = opening.result.transaction('kept').objectStore('kept').count();
      counting.onsuccess = () => {
        opening.result.close();
        resolve(counting.result);
      };
    };
  });

/** Whether what is to be done stands clear of the pads, without scrolling. Runs in the page. */
const inSight = (): boolean => {
  const title = document.querySelector('h1')?.getBoundingClientRect();
  const pads = document.querySelector('.pads')?.getBoundingClientRect();
  return !title || !pads || title.bottom <= Math.min(pads.top, innerHeight) || title.left >= pads.right;
};

/** A maker at the bench, through the real screens: what is typed and pressed, nothing else. */
export class BenchPage {
  constructor(readonly page: Page) {}

  get heading() {
    return this.page.getByRole('heading', { level: 1 });
  }

  /** The page's clock goes on by so many hours; nobody waits for it. */
  async wait(hours: number): Promise<void> {
    await this.page.clock.fastForward(hours * HOUR);
    await this.page.clock.runFor(2000);
  }

  async begin(kit: RegExp, name: string): Promise<void> {
    await this.page.getByRole('link', { name: 'Start a batch' }).click();
    await this.page.getByRole('radio', { name: kit }).check();
    await this.page.getByLabel('What do you call this batch?').fill(name);
    await this.press('begin this batch');
    await expect(this.page).toHaveTitle(new RegExp(name));
  }

  async press(pad: string | RegExp): Promise<void> {
    await this.page.getByRole('button', { name: pad }).first().click();
  }

  pad(name: RegExp) {
    return this.page.getByRole('button', { name });
  }

  /** Answers the warning, where one stands before the act; `read` comes before it is answered. */
  async heed(read: () => Promise<void> = () => Promise.resolve()): Promise<void> {
    const own = this.page.locator('.pads button:visible').first();
    await expect(own).toBeEnabled();
    if (/^ready to continue/.test(await own.innerText())) {
      await read();
      await this.press(/^ready to continue/);
    }
    await expect(this.pad(/^ready to continue/)).toHaveCount(0);
  }

  /** What an answer leads to: it is kept on the device, and then something else is on the screen. */
  private async counts(answer: () => Promise<void>): Promise<void> {
    const screen = () => this.page.locator('main').innerText();
    const kept = await this.page.evaluate(howMuchIsKept);
    const before = await screen();
    await answer();
    await expect.poll(() => this.page.evaluate(howMuchIsKept)).toBeGreaterThan(kept);
    await expect.poll(screen).not.toBe(before);
  }

  /** What is to be done can be read at a glance: nothing lies over it. */
  async clear(): Promise<void> {
    await expect.poll(() => this.page.evaluate(inSight), await this.heading.innerText()).toBe(true);
  }

  /** The act on the screen, by its heading, and what answers it; then the next one is there. */
  async act(heading: RegExp, answer: () => Promise<void> = () => this.press(/^that is done/)): Promise<void> {
    await this.heed();
    await expect(this.heading).toHaveText(heading);
    await this.clear();
    await this.counts(answer);
  }

  async sachet(printed: string): Promise<void> {
    await expect(this.page.getByText(printed).first()).toBeVisible();
    await this.press(/^that is done/);
    await expect(this.heading).toContainText(printed);
    await this.yes();
  }

  /** Answers what is asked back. */
  async yes(): Promise<void> {
    await expect(this.heading).toContainText('Right?');
    await this.press(/^yes it is/);
    await expect(this.heading).not.toContainText('Right?');
  }

  /** A reading that does not fit the last one is asked once more before it counts. */
  async yesAllTheSame(question: RegExp): Promise<void> {
    await expect(this.heading).toHaveText(question);
    await this.press(/^yes it is/);
    await expect(this.heading).not.toHaveText(question);
  }

  async byTheClock(heading: RegExp, seconds: number): Promise<void> {
    await this.heed();
    await expect(this.heading).toHaveText(heading);
    await this.clear();
    await this.press(/^start the clock/);
    await expect(this.page.getByRole('timer', { name: /left/ })).toBeVisible();
    await this.wait((seconds - 1) / 3600);
    await this.press(/^that is done/);
    await expect(this.pad(/^one more minute/)).toHaveCount(0);
  }

  async allThere(): Promise<void> {
    for (const tick of await this.page.getByRole('checkbox').all()) await tick.check();
    await this.press(/^that is done/);
    await this.yes();
  }

  async hydrometer(division: '0.001' | '0.002'): Promise<void> {
    await this.page.getByRole('radio', { name: division }).check();
    await this.page.getByRole('radio', { name: /^20 °C/ }).check();
    await this.page.getByLabel('Warmth of that water').fill('20');
    await this.page.getByLabel('What it shows in plain water').fill('1000');
    await this.readBack();
  }

  async number(label: RegExp, value: string): Promise<void> {
    await this.page.getByRole('textbox', { name: label }).fill(value);
    await this.readBack();
  }

  async readBack(): Promise<void> {
    await this.press(/^read it back/);
    await this.yes();
  }

  async read({ reading, sample = '20', wine = '21', degassed = true }: Told): Promise<void> {
    await this.heed();
    if ((await this.page.getByLabel('Warmth of the sample').count()) === 0) await this.press(/^new reading/);
    await this.page.getByLabel('Warmth of the sample').fill(sample);
    await this.page.getByLabel('What the hydrometer shows').fill(reading);
    await this.page.getByLabel('Warmth of the wine itself').fill(wine);
    const answer = (question: RegExp, yes: boolean) =>
      this.page
        .getByRole('group', { name: question })
        .getByRole('radio', { name: yes ? 'Yes' : 'No', exact: true })
        .check();
    await answer(/Was the gas shaken out/, degassed);
    await answer(/Did the sample go back/, true);
    await this.readBack();
  }

  /** At a gate: a shake test that hears nothing, whether the guide asks for it or the maker makes it. */
  async quietGasTest(): Promise<void> {
    await this.judge(/^test for gas/, /^No, the same/);
  }

  async looksClear(): Promise<void> {
    await this.judge(/^look at the wine/, /^Yes, it is clear/);
  }

  private async judge(test: RegExp, answer: RegExp): Promise<void> {
    await expect(this.pad(test).or(this.pad(answer)).first()).toBeEnabled();
    await this.counts(async () => {
      if ((await this.pad(answer).count()) === 0) await this.press(test);
      await this.press(answer);
    });
  }

  /** At a gate: a reading more, and the question that a doubtful one raises. */
  async readAtGate(told: Told, doubt?: RegExp): Promise<void> {
    await this.press(/^new reading/);
    await this.read(told);
    if (doubt) await this.yesAllTheSame(doubt);
    await expect(this.page.getByRole('button', { name: /^go on now/ })).toBeVisible();
  }

  async held(sentence: RegExp): Promise<void> {
    await expect(this.heading).toHaveText('Not yet.');
    await expect(this.page.getByText(sentence).first()).toBeVisible();
    await expect(this.pad(/^go on now/)).toBeDisabled();
  }

  async goOn(opened: string): Promise<void> {
    await expect(this.heading).toHaveText(opened);
    await this.press(/^go on now/);
  }
}
