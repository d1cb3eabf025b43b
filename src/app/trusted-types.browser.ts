import ticker from '../timers/ticker.worker?worker&url';
import ear from '../voice/ear/ear.worker?worker&url';

/** What TypeScript's DOM does not know yet. */
type ScriptUrls = { createScriptURL: (address: string) => string };
type TrustedTypes = { createPolicy: (name: string, rules: ScriptUrls) => ScriptUrls };
declare global {
  var trustedTypes: TrustedTypes | undefined;
}

export const SERVICE_WORKER = 'service-worker.js';

/** Every script that a worker may be made of. */
const OURS = [SERVICE_WORKER, ticker, ear].map(whole);

const rules: ScriptUrls = {
  createScriptURL(address) {
    const asked = whole(address);
    if (!OURS.includes(asked)) throw new TypeError(`${asked} is not a worker of this app`);
    return asked;
  },
};
const policy = globalThis.trustedTypes?.createPolicy('fallbright', rules) ?? rules;

/**
 * The address of one of our own workers, so marked that the page's policy takes it. Where the browser has no Trusted
 * Types it stays a plain address, and any other is refused all the same.
 */
export const trustedScriptUrl = (address: string): string => policy.createScriptURL(address);

function whole(address: string): string {
  return new URL(address, document.baseURI).href;
}
