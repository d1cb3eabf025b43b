import { existsSync, readFileSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { run } from './run.mjs';

const CHROME = {
  linux: ['/opt/google/chrome/chrome'],
  darwin: ['/Applications/Google Chrome.app/Contents/MacOS/Google Chrome'],
  win32: [process.env['PROGRAMFILES'], process.env['PROGRAMFILES(X86)'], process.env['LOCALAPPDATA']].map(
    (folder) => `${folder}\\Google\\Chrome\\Application\\chrome.exe`,
  ),
};

/** @param {string} program */
const onPath = (program) =>
  (process.env['PATH'] ?? '').split(delimiter).map((folder) => join(folder, program));

/**
 * The browser to test with. Playwright's own is looked for where Playwright says it would be.
 * @returns {Promise<string | undefined>}
 */
export async function findBrowser() {
  const { chromium } = await import('@playwright/test');
  const places = [
    process.env['CHROME_PATH'],
    chromium.executablePath(),
    '/usr/bin/chromium',
    ...['chromium', 'google-chrome', 'google-chrome-stable'].flatMap(onPath),
    ...(CHROME[/** @type {keyof typeof CHROME} */ (process.platform)] ?? []),
  ];
  return places.find((place) => place && existsSync(place));
}

function isDebian() {
  try {
    return /^ID(_LIKE)?=.*(debian|ubuntu)/m.test(readFileSync('/etc/os-release', 'utf8'));
  } catch {
    return false;
  }
}

async function installWithApt() {
  console.log("Installing Debian's Chromium …");
  const env = { DEBIAN_FRONTEND: 'noninteractive' };
  await run('apt-get', ['update', '-q'], { quiet: true, env });
  const args = ['install', '-y', '-q', '--no-install-recommends', 'chromium'];
  const { ok, output } = await run('apt-get', args, { quiet: true, env });
  if (!ok) console.error(output);
}

/** Whether a browser to test with is there, once installed where that can be done unasked. */
export async function ensureBrowser() {
  if (await findBrowser()) return true;
  if (isDebian() && process.getuid?.() === 0) await installWithApt();
  if (await findBrowser()) return true;
  console.error(
    'The browser tests need Chromium. Install it ("sudo apt-get install chromium", or "npx playwright install ' +
      'chromium"), or name an installed Chrome: CHROME_PATH=/path/to/chrome npm test',
  );
  return false;
}
