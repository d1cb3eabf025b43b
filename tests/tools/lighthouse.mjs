import { createServer } from 'node:net';
import { chromium } from '@playwright/test';
import { findBrowser } from './browser.mjs';

/** Not among the packages of the lock: it would make a third more of them to fetch, for what few look at. */
const PACKAGE = 'lighthouse';
const VERSION = '12.2.3';

/**
 * What is read of its result.
 * @typedef {{ title: string, score: number | null, displayValue?: string }} Audit
 * @typedef {{ title: string, score: number | null, auditRefs: { id: string, weight: number }[] }} Category
 * @typedef {{ lhr: { categories: Record<string, Category>, audits: Record<string, Audit | undefined> } }} Result
 * @typedef {(address: string, flags: { port: number, logLevel: 'error' }) => Promise<Result | undefined>} Lighthouse
 */

/** @returns {Promise<Lighthouse | undefined>} */
async function findLighthouse() {
  try {
    return /** @type {{ default: Lighthouse }} */ (await import(PACKAGE)).default;
  } catch (error) {
    if (/** @type {NodeJS.ErrnoException} */ (error).code === 'ERR_MODULE_NOT_FOUND') return undefined;
    throw error;
  }
}

const FIGURES = [
  'first-contentful-paint',
  'largest-contentful-paint',
  'total-blocking-time',
  'cumulative-layout-shift',
];

/** @returns {Promise<number>} */
const freePort = () =>
  new Promise((resolve, reject) => {
    const server = createServer();
    server.once('error', reject).listen(0, '127.0.0.1', () => {
      const address = server.address();
      server.close(() => resolve(address && typeof address === 'object' ? address.port : 0));
    });
  });

/**
 * What Lighthouse says of a page as a phone opens it: the scores, the figures, and what is less than whole.
 * @param {string} address
 * @returns {Promise<string[]>}
 */
export async function lighthouseOf(address) {
  const lighthouse = await findLighthouse();
  if (!lighthouse)
    return [
      `Left out: Lighthouse is not installed. "npm install --no-save ${PACKAGE}@${VERSION}" puts it here.`,
    ];
  const port = await freePort();
  const executablePath = await findBrowser();
  const quiet = ['quic', 'background-networking', 'component-update', 'sync'];
  const browser = await chromium.launch({
    ...(executablePath ? { executablePath } : {}),
    args: [`--remote-debugging-port=${port}`, ...quiet.map((part) => `--disable-${part}`)],
  });
  try {
    const result = await lighthouse(address, { port, logLevel: 'error' });
    if (!result) return ['Lighthouse came to no result.'];
    const { categories, audits } = result.lhr;
    const scores = Object.values(categories).map(
      ({ title, score }) => `${title} ${Math.round((score ?? 0) * 100)}`,
    );
    const figures = FIGURES.flatMap((id) => {
      const audit = audits[id];
      return audit ? [`${audit.title} ${audit.displayValue ?? 'unknown'}`] : [];
    });
    const less = Object.values(categories)
      .flatMap(({ auditRefs }) => auditRefs)
      .flatMap(({ id, weight }) => {
        const audit = audits[id];
        const isLess = audit && weight > 0 && audit.score !== null && audit.score < 1;
        return isLess ? [`less than whole: ${audit.title} (${Math.round((audit.score ?? 0) * 100)})`] : [];
      });
    return [scores.join(', '), figures.join(', '), ...less];
  } finally {
    await browser.close();
  }
}
