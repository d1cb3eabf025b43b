import type { Page } from '@playwright/test';

/** How much slower than this machine the measured one is: about a cheap phone. */
const SLOWDOWN = 6;

declare global {
  /** Milliseconds from each key press to the frame in which another heading was painted. */
  var painted: number[];
}

/** Times every key press that leads to another heading. Runs in the page, before anything of it. */
export function timeKeys(): void {
  globalThis.painted = [];
  let pressed: number | undefined;
  let before = '';
  const heading = () => document.querySelector('h1:not([hidden] *)')?.textContent ?? '';
  addEventListener(
    'keydown',
    () => {
      pressed = performance.now();
      before = heading();
    },
    true,
  );
  new MutationObserver(() => {
    const since = pressed;
    if (since === undefined || heading() === '' || heading() === before) return;
    pressed = undefined;
    // What is posted in the frame comes to its turn when that frame is painted.
    requestAnimationFrame(() => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = () => globalThis.painted.push(performance.now() - since);
      port2.postMessage(undefined);
    });
  }).observe(document, { subtree: true, childList: true, characterData: true });
}

/** Presses the main key on a machine that is slow for as long as it takes, and answers how long it took. */
export async function timedPress(page: Page): Promise<number> {
  const before = await page.evaluate(() => globalThis.painted.length);
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWDOWN });
  await page.keyboard.press('Space');
  await page.waitForFunction((length) => globalThis.painted.length > length, before);
  await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  await session.detach();
  return page.evaluate(() => globalThis.painted.at(-1)!);
}

export function percentile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)]!;
}
