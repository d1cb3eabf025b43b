import type { Page } from '@playwright/test';
import { clipOf, CLIPS } from '../voice/corpus/render-clips';
import { expect } from './fixtures';
import { say } from './microphone';

/** A clip to hear the loudness of speech by. */
export const SPEECH = `${CLIPS}/${clipOf('ready to continue')}`;

/** How long a maker waits for an answer before saying it once more, in milliseconds. */
const PATIENCE = 6000;
const TRIES = 3;
const TRIES_TO_TELL = 4;

/** A bench that is spoken to: every phrase is a sound, heard by the ears that are shipped. */
export class SpokenTo {
  /** What had to be said once more. */
  readonly saidAgain: string[] = [];
  /** What was taken for something else, and taken back. */
  readonly putRight: string[] = [];

  constructor(
    readonly page: Page,
    readonly clips = CLIPS,
    readonly tries = TRIES,
  ) {}

  get ear() {
    return this.page.getByRole('button', { name: /listen to me|stop listening|try to listen again/ }).first();
  }

  /** Asks the page to listen, and accepts its invitation. */
  async accept(): Promise<void> {
    await this.page.getByRole('button', { name: 'listen to me' }).first().click();
    await this.page.getByRole('button', { name: 'listen to me', exact: true }).last().click();
  }

  /** Turned on by hand, as the ears have to be; then nothing more is touched. */
  async turnOn(): Promise<void> {
    await this.accept();
    await this.listens();
  }

  /** The ears are open; where they call the room too loud, they listen all the same. */
  async listens(): Promise<void> {
    await expect(this.ear).toContainText(/(?<!not )(listening|too loud here)\s+stop listening/, {
      timeout: 20_000,
    });
  }

  /** Says a phrase once, whatever comes of it, as soon as the ears are open. */
  async says(phrase: string): Promise<void> {
    await this.listens();
    // The echo of what the guide said has to die away, and a maker draws breath.
    await this.page.waitForTimeout(500);
    await this.plays(phrase);
  }

  /** A phrase sounds, whether anyone listens or not. */
  plays(phrase: string): Promise<void> {
    return say(this.page, `${this.clips}/${clipOf(phrase)}`);
  }

  /** Says a phrase, and says it again where it was not caught, until it has come to something. */
  async saysUntil(phrase: string, cameTo: () => Promise<boolean>): Promise<void> {
    for (let nth = 0; nth < this.tries; nth += 1) {
      if (nth > 0) this.saidAgain.push(phrase);
      await this.says(phrase);
      const until = Date.now() + PATIENCE;
      while (Date.now() < until) {
        if (await cameTo()) return;
        await this.page.waitForTimeout(100);
      }
    }
    throw new Error(`“${phrase}” was said ${String(this.tries)} times and came to nothing`);
  }

  /** Says a phrase until the heading is another, or the one that is wanted. */
  async saysTo(phrase: string, wanted: RegExp): Promise<void> {
    const heading = this.page.getByRole('heading', { level: 1 });
    await this.saysUntil(phrase, async () => wanted.test((await heading.textContent()) ?? ''));
  }

  /** Answers a card's question; what was taken for something else is taken back, and told again. */
  async tells(asks: string, phrase: () => string, meant: string): Promise<void> {
    const heading = this.page.getByRole('heading', { level: 1 });
    const isAsked = async () => (await heading.textContent()) === asks;
    const row = this.page.locator('dl > div').filter({ hasText: asks }).locator('dd');
    for (let nth = 0; nth < TRIES_TO_TELL; nth += 1) {
      await this.saysUntil(phrase(), async () => !(await isAsked()));
      // What is told last is in what is read back.
      if ((await row.count()) === 0) return;
      const taken = (await row.textContent()) ?? '';
      if (taken === meant) return;
      this.putRight.push(`“${taken}” to “${asks}”`);
      await this.saysUntil('that is wrong', isAsked);
    }
    throw new Error(
      `“${asks}” was answered ${String(TRIES_TO_TELL)} times, and always taken for something else`,
    );
  }
}
