import type { Page } from '@playwright/test';
import { MISHAP_IDS } from '../../../src/procedure/mishap';
import { en } from '../../../src/text/en';
import { renderPhrases } from '../../voice/corpus/render-clips';
import type { BenchPage } from '../bench';
import { expect, test } from '../fixtures';
import { keptEvents } from '../kept-events';
import { withMicrophone } from '../microphone';
import { answerTo, atTheShutGate } from '../shut-gate';
import { SpokenTo } from '../spoken-to';

test.use({ timezoneId: 'UTC', trace: 'off' });
test.beforeEach(({ context }) => withMicrophone(context));

const { 'stop listening': deafening, ...others } = en.guide.commands;
/** What turns the ears off comes last. */
const COMMANDS = [...Object.values(others).flat(), ...deafening];
const MISHAPS = MISHAP_IDS.map((mishap) => en.whatHappened.mishaps[mishap].spoken);
const NUMBERS = ['nine nine four', 'one point zero five four', 'twenty one and a half', 'thirty'];

/** Renders what is said for this run alone: Debian's flite and sox do it. */
function spokenTo(page: Page, phrases: readonly string[]): SpokenTo {
  const folder = test.info().outputPath('clips');
  renderPhrases(phrases, folder);
  return new SpokenTo(page, folder);
}

/** Back to the gate by the list of batches, once that has been on the screen: the guide begins anew, with ears as before. */
async function backTo(gate: string, { page, heading }: BenchPage): Promise<void> {
  await page.goto('/#/');
  await expect(page.getByRole('link', { name: 'Start a batch' })).toBeVisible();
  await page.goto(gate);
  await expect(heading).toHaveText('Not yet.');
}

test('at the gate before the stabiliser, shut, no phrase that there is opens it or changes the batch', async ({
  page,
}) => {
  test.setTimeout(900_000);
  const phrases = [...MISHAPS, ...NUMBERS, ...COMMANDS];
  const spoken = spokenTo(page, phrases);
  const bench = await atTheShutGate(page);
  const gate = page.url();
  await spoken.turnOn();
  const already = await keptEvents(page);
  let answered = 0;
  for (const phrase of phrases) {
    answered += (await answerTo(spoken, phrase)).length > 0 ? 1 : 0;
    expect(await keptEvents(page), phrase).toEqual(already);
    const isDeaf = deafening.includes(phrase) && /listen to me/.test(await spoken.ear.innerText());
    if (isDeaf) await spoken.turnOn();
    if ((await bench.heading.textContent()) === 'Not yet.') continue;
    // Held, or asked for a number.
    await backTo(gate, bench);
  }
  // The ears were open: what is on offer was answered, the offers of other places were not.
  expect(answered).toBeGreaterThan(8);
});

test('once something went wrong, no mishap that is said counts by itself', async ({ page }) => {
  test.setTimeout(1_200_000);
  const spoken = spokenTo(page, ['something went wrong', 'go on now', ...MISHAPS]);
  const bench = await atTheShutGate(page);
  const gate = page.url();
  await spoken.turnOn();
  const already = await keptEvents(page);
  const understood: string[] = [];
  for (const phrase of MISHAPS) {
    await spoken.saysUntil('something went wrong', () => bench.pad(/^go on now/).isEnabled());
    if ((await answerTo(spoken, phrase)).length > 0) understood.push(phrase);
    await answerTo(spoken, 'go on now');
    expect(await keptEvents(page), phrase).toEqual(already);
    await backTo(gate, bench);
  }
  console.log(`  ${String(understood.length)} of ${String(MISHAPS.length)} mishaps were understood`);
  expect(understood.length).toBeGreaterThan(MISHAPS.length / 2);
});
