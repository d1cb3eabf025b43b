import { readFileSync } from 'node:fs';
import { chromium } from '@playwright/test';
import { findBrowser } from './browser.mjs';

/** Draws the icons of the manifest anew from public/icon.svg. What masks or rounds them itself gets the whole square. */
const ICONS = [
  { file: 'icon-192.png', pixels: 192, isRounded: true },
  { file: 'icon-512.png', pixels: 512, isRounded: true },
  { file: 'icon-maskable-512.png', pixels: 512, isRounded: false },
  { file: 'apple-touch-icon.png', pixels: 180, isRounded: false },
];

const drawing = readFileSync('public/icon.svg', 'utf8');
const executablePath = await findBrowser();
const browser = await chromium.launch(executablePath ? { executablePath } : {});
const page = await browser.newPage();
for (const { file, pixels, isRounded } of ICONS) {
  await page.setViewportSize({ width: pixels, height: pixels });
  await page.setContent(
    `<style>body { margin: 0 } svg { display: block; width: 100vw } ${isRounded ? '' : '#ground { rx: 0 }'}</style>${drawing}`,
  );
  await page.screenshot({ path: `public/${file}`, omitBackground: true });
  console.log(`public/${file}`);
}
await browser.close();
