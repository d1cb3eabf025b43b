import type { Page } from '@playwright/test';
import { Maker, type Wine } from '../story/maker';
import type { BenchPage } from './bench';
import { broughtIn, makerOf } from './brought-in';
import { expect } from './fixtures';
import { spokenOn } from './spoken';
import type { SpokenTo } from './spoken-to';

/** A wine that is still on its way when its maker comes to the gate. */
const SLOW: Wine = { gravityOn: (day) => 0.994 + 0.074 * Math.exp(-day / 6), celsius: 21 };

/** What is said is told within half a second of its last sound, and acted on at once. */
const HEARD = 900;

/** Before the stabiliser, at the gate that is shut. */
export async function atTheShutGate(page: Page): Promise<BenchPage> {
  const { sheet, now } = makerOf('hedge-lantern');
  const bench = await broughtIn(page, new Maker(sheet, SLOW, now).goTo('proving dry'));
  await expect(bench.heading).toHaveText('Not yet.');
  return bench;
}

/** Says a phrase once, and gives what the guide said to it. */
export async function answerTo(spoken: SpokenTo, phrase: string): Promise<string[]> {
  const before = (await spokenOn(spoken.page)).lines.length;
  await spoken.says(phrase);
  await spoken.page.waitForTimeout(HEARD);
  return (await spokenOn(spoken.page)).lines.slice(before);
}
