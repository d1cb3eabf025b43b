import type { Page } from '@playwright/test';

/** How much slower than this machine the measured one is: about a cheap phone. */
const SLOWDOWN = 6;

declare global {
  /** Milliseconds from the last key press to the frame in which another heading was painted. */
  var painted: Promise<number>;
}

/** Times the next key press, if it leads to another heading. Runs in the page, which must be at rest: nothing in here asks it for a frame. */
function timeNextKey(): void {
  const heading = () => document.querySelector('h1:not([hidden] *)')?.textContent ?? '';
  globalThis.painted = new Promise((resolve) => {
    let pressed: number | undefined;
    const before = heading();
    addEventListener('keydown', () => (pressed ??= performance.now()), { capture: true, once: true });
    const changes = new MutationObserver(() => {
      const since = pressed;
      if (since === undefined || heading() === '' || heading() === before) return;
      changes.disconnect();
      // What is posted in the frame comes to its turn when that frame is painted.
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => resolve(performance.now() - since);
        port2.postMessage(undefined);
      });
    });
    changes.observe(document, { subtree: true, childList: true, characterData: true });
  });
}

/** How long a maker looks at an act, at the least, before the next press. */
const LOOKED_AT = 600;

/** Presses the main key on a machine that is slow for as long as it takes, and answers how long it took. */
export async function timedPress(page: Page): Promise<number> {
  await page.waitForTimeout(LOOKED_AT);
  await page.evaluate(timeNextKey);
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWDOWN });
  await page.keyboard.press('Space');
  const painted = await page.evaluate(() => globalThis.painted);
  await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  await session.detach();
  return painted;
}

export function percentile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)]!;
}
