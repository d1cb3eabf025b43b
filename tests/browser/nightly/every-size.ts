import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from '@playwright/test';

const SIZES = { phone: [390, 844], tablet: [1024, 768], wall: [1920, 1080] } as const;

/** Where the pictures go, if any are wanted: `SCREENS=<folder>`. */
const FOLDER = process.env['SCREENS'];

/** Takes a picture of a screen at every size, by day and by night, and leaves the page as it was. */
export function everySize(page: Page, of: string): (name: string) => Promise<void> {
  let nth = 0;
  return async (name) => {
    if (!FOLDER) return;
    const folder = join(FOLDER, of);
    mkdirSync(folder, { recursive: true });
    nth += 1;
    for (const [size, [width, height]] of Object.entries(SIZES)) {
      await page.setViewportSize({ width, height });
      for (const colorScheme of ['light', 'dark'] as const) {
        await page.emulateMedia({ colorScheme });
        const file = `${String(nth).padStart(3, '0')} ${name.replace(/[^\w ,]/g, '')} ${size} ${colorScheme}.png`;
        await page.screenshot({ path: join(folder, file), animations: 'disabled' });
      }
    }
  };
}
