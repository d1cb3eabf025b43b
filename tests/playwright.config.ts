import { defineConfig, devices } from '@playwright/test';
import { findBrowser } from './tools/browser.mjs';

const executablePath = await findBrowser();
const quiet = ['quic', 'background-networking', 'component-update', 'sync'].map(
  (part) => `--disable-${part}`,
);

const nightly = process.env['NIGHTLY'] === '1';

/** The port is any free one: the server says which, and Playwright sets the variable from the pattern's group. */
const port = process.env['FALLBRIGHT_PORT'] ?? '';

export default defineConfig({
  testDir: 'browser',
  testIgnore: nightly ? [] : '**/nightly/**',
  outputDir: '../test-results/browser',
  fullyParallel: true,
  forbidOnly: Boolean(process.env['CI']),
  workers: 2,
  retries: 0,
  timeout: 30_000,
  globalTimeout: (nightly ? 120 : 9) * 60_000,
  reporter: process.env['PLAYWRIGHT_JSON_OUTPUT_FILE'] ? [['list'], ['json']] : 'list',
  use: {
    ...devices['Desktop Chrome'],
    baseURL: `http://localhost:${port}/`,
    locale: 'en-GB',
    timezoneId: 'Europe/Vienna',
    trace: { mode: 'retain-on-failure', screenshots: false, sources: false },
    launchOptions: {
      ...(executablePath ? { executablePath } : {}),
      args: [...quiet, '--no-first-run'],
    },
  },
  webServer: {
    command: 'node tests/tools/serve.mjs dist /some/sub/path/ /',
    cwd: '..',
    wait: { stdout: /Serving on port (?<FALLBRIGHT_PORT>\d+)/ },
  },
});
