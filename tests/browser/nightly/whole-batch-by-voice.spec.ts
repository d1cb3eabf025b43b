import type { BatchEvent } from '../../../src/workflow/batch-event';
import { PlainSpoken, PLAIN_WINE } from '../../story/plain-spoken';
import { BenchPage } from '../bench';
import { makerOf } from '../brought-in';
import { expect, test } from '../fixtures';
import { keptEvents } from '../kept-events';
import { makeNoise, withMicrophone } from '../microphone';
import { SPEECH } from '../spoken-to';
import { LedByVoice } from './led-by-voice';

test.use({ timezoneId: 'UTC', trace: 'off' });
test.beforeEach(async ({ context }) => {
  await withMicrophone(context);
  await context.addInitScript(watchHands);
});

declare global {
  /** What a hand pressed, and where it typed, in order. */
  var touched: string[];
}

/** Writes down every touch. Runs in the page, before its own scripts. */
function watchHands(): void {
  globalThis.touched = [];
  const note = (what: string) => (event: Event) => {
    const target = event.target instanceof Element ? event.target : document.body;
    const pressed = target.closest('button, a, label') ?? target;
    const name =
      pressed instanceof HTMLInputElement ? (pressed.labels?.[0]?.textContent ?? '') : pressed.textContent;
    globalThis.touched.push(`${what}: ${name.trim().replace(/\s+/g, ' ')}`);
  };
  addEventListener('pointerdown', note('pressed'), { capture: true });
  addEventListener('keydown', note('pressed a key'), { capture: true });
  addEventListener('change', note('filled in'), { capture: true });
}

/** What needs a hand, and why: a batch is named in a dry moment, and a browser opens no microphone without a touch. */
const BY_HAND = [
  /^pressed: Start a batch/,
  /^pressed: .*Hedge Lantern/,
  /^filled in: .*Hedge Lantern/,
  /^pressed: begin this batch/,
  // A field is filled in once it is left.
  /^filled in: What do you call this batch\?/,
  /^pressed: .*listen to me/,
  /^pressed: .*listen to me/,
];

/** What was told, without when and how, and without which readings a gate was passed on. */
function told(events: readonly BatchEvent[]): unknown[] {
  const APART: ReadonlySet<string> = new Set(['at', 'offsetMinutes', 'how', 'confirmed', 'readings']);
  return events.map((event) => Object.fromEntries(Object.entries(event).filter(([key]) => !APART.has(key))));
}

test('from unboxing to the last look, by speech alone, without a network and over noise', async ({
  page,
  context,
  faults,
}) => {
  test.setTimeout(2_400_000);
  const { sheet, now } = makerOf('hedge-lantern');
  const maker = new PlainSpoken(sheet, PLAIN_WINE, now);
  await page.clock.install({ time: maker.now.at });
  await page.goto('/');
  await page.evaluate(() => navigator.serviceWorker.ready);

  await new BenchPage(page).begin(/Hedge Lantern/, 'Shelf two');
  const led = new LedByVoice(page, maker);
  await led.spoken.turnOn();
  await context.setOffline(true);
  await makeNoise(page, SPEECH, 15);

  led.slips = { 'measure brim 1, litres': 20, 'read start 1, reading': 10_260 };
  const began = Date.now();
  await led.toTheEnd();

  const kept = await keptEvents(page);
  console.log(
    `  ${String(kept.length)} entries in ${((Date.now() - began) / 60_000).toFixed(1)} minutes; ` +
      `said again: ${String(led.spoken.saidAgain.length)} (${led.spoken.saidAgain.join(', ')}); put right: ${led.spoken.putRight.join(', ')}`,
  );
  expect(told(kept)).toEqual(told(maker.journal));
  expect(kept.filter(({ how }) => how !== 'voice' && how !== 'timer')).toEqual([]);
  expect(await page.evaluate(() => globalThis.touched)).toEqual(
    BY_HAND.map((touch) => expect.stringMatching(touch)),
  );
  expect(led.spoken.putRight).toEqual(
    expect.arrayContaining([
      expect.stringMatching(/twenty litres|20 litres/),
      expect.stringMatching(/one point zero two six/i),
    ]),
  );
  await context.setOffline(false);
  // The browser itself remarks on what cannot be fetched without a network: an icon, a look for a new version.
  faults.splice(
    0,
    faults.length,
    ...faults.filter((fault) => !/ERR_INTERNET_DISCONNECTED|when fetching the script/.test(fault)),
  );
});
