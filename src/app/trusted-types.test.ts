import { afterEach, describe, expect, test, vi } from 'vitest';

type Rules = { createScriptURL: (address: string) => string };

/** A page at some address, in a browser that knows Trusted Types or does not. */
async function trustedScriptUrlAt(baseURI: string, trustedTypes?: object) {
  vi.resetModules();
  vi.stubGlobal('document', { baseURI });
  vi.stubGlobal('trustedTypes', trustedTypes);
  return (await import('./trusted-types.browser')).trustedScriptUrl;
}
const marking = {
  createPolicy: (name: string, { createScriptURL }: Rules) => ({
    createScriptURL: (address: string) => `${name} trusts ${createScriptURL(address)}`,
  }),
};

afterEach(() => vi.unstubAllGlobals());

describe.each([
  ['with Trusted Types', marking, 'fallbright trusts '],
  ['without them', undefined, ''],
])('%s', (_, trustedTypes, mark) => {
  test('our own service worker is trusted, wherever the page lies', async () => {
    const trusted = await trustedScriptUrlAt('https://host.example/a/shelf/?x=1#/start', trustedTypes);
    expect(trusted('service-worker.js')).toBe(`${mark}https://host.example/a/shelf/service-worker.js`);
  });

  test('so is the ticker', async () => {
    const { default: ticker } = await import('../timers/ticker.worker?worker&url');
    const trusted = await trustedScriptUrlAt('https://host.example/', trustedTypes);
    expect(trusted(ticker)).toBe(`${mark}${new URL(ticker, 'https://host.example/').href}`);
  });

  test.each([
    'https://elsewhere.example/service-worker.js',
    '/service-worker.js',
    'service-worker.js?other',
    'assets/other.js',
    'data:text/javascript,1',
    '',
  ])('“%s” is not', async (address) => {
    const trusted = await trustedScriptUrlAt('https://host.example/a/shelf/', trustedTypes);
    expect(() => trusted(address)).toThrow('is not a worker of this app');
  });
});
