import { test as base, expect, type BrowserContext } from '@playwright/test';
import { madeUpVoice, noVoice } from './spoken';

/** What no page of ours may do, noted as it happens: complain on the console, break its policy, call elsewhere. */
function watch(context: BrowserContext, origin: string): string[] {
  const faults: string[] = [];
  context.on('weberror', (event) => faults.push(`uncaught: ${event.error().message}`));
  context.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning')
      faults.push(`${message.type()}: ${message.text()} (${message.location().url})`);
  });
  context.on('request', (request) => {
    const { protocol, origin: target } = new URL(request.url());
    if (protocol.startsWith('http') && target !== origin) faults.push(`request elsewhere: ${request.url()}`);
  });
  return faults;
}

type Fixtures = {
  /** What speaks on the device: a voice that is over at once, or none, so that every line is shown as long as it is read. */
  voice: 'made up' | 'none';
  /** How long the made-up voice takes for a line. */
  secondsALine: number;
  /** Problems seen so far. A spec that provokes one on purpose empties it; what is left at the end fails it. */
  faults: string[];
};

export const test = base.extend<Fixtures>({
  voice: ['made up', { option: true }],
  secondsALine: [0, { option: true }],
  faults: [
    async ({ context, baseURL, voice, secondsALine }, use) => {
      if (voice === 'none') await context.addInitScript(noVoice);
      else await context.addInitScript(madeUpVoice, secondsALine);
      await context.addInitScript(() => {
        document.addEventListener('securitypolicyviolation', (event) => {
          console.error(`policy: ${event.violatedDirective} ${event.blockedURI} ${event.sample}`);
        });
      });
      const faults = watch(context, new URL(baseURL ?? '').origin);
      await use(faults);
      expect(faults, 'console errors, policy violations and requests elsewhere').toEqual([]);
    },
    { auto: true },
  ],
});

export { expect };
