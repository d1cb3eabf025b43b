import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { violations } from '../violations';
import { layoutFaults } from './layout-faults';

/** The laptop is at 200 % zoom: half as many pixels of style each way. */
const SIZES = {
  phone: [390, 844],
  'small phone': [320, 640],
  'phone on its side': [844, 390],
  tablet: [1024, 768],
  'laptop at 200': [640, 400],
  wall: [1920, 1080],
} as const;

const PICTURED: ReadonlySet<string> = new Set<keyof typeof SIZES>(['phone', 'tablet', 'wall']);

/** Where the pictures go, if any are wanted: `SCREENS=<folder>`. */
const FOLDER = process.env['SCREENS'];

/**
 * Looks at a screen at every size: what the eye for layout finds is noted under the screen's name. Axe looks by day and by
 * night at the first screen of each kind, where one is named. Pictures are taken where they are wanted. The page is left as it was.
 */
export class EverySize {
  readonly faults: Record<string, unknown> = {};
  readonly #kinds = new Set<string>();
  #nth = 0;

  constructor(
    readonly page: Page,
    readonly of: string,
  ) {}

  look = async (name: string, kind?: string): Promise<void> => {
    const before = this.page.viewportSize();
    const isNew = kind !== undefined && !this.#kinds.has(kind);
    if (kind !== undefined) this.#kinds.add(kind);
    this.#nth += 1;
    for (const [size, [width, height]] of Object.entries(SIZES)) {
      await this.page.setViewportSize({ width, height });
      this.#note(name, size, await layoutFaults(this.page));
      const pictured = FOLDER !== undefined && PICTURED.has(size);
      for (const colorScheme of isNew || pictured ? (['light', 'dark'] as const) : []) {
        await this.page.emulateMedia({ colorScheme });
        if (isNew) this.#note(name, `${size}, ${colorScheme}`, await violations(this.page));
        if (FOLDER && pictured) await this.#picture(FOLDER, `${name} ${size} ${colorScheme}`);
      }
    }
    if (before) await this.page.setViewportSize(before);
  };

  #note(name: string, where: string, found: readonly unknown[]): void {
    if (found.length > 0) this.faults[`${name}: ${where}`] = found;
  }

  async #picture(root: string, name: string): Promise<void> {
    const folder = join(root, this.of);
    mkdirSync(folder, { recursive: true });
    const file = `${String(this.#nth).padStart(3, '0')} ${name.replace(/[^\w ,]/g, '')}.png`;
    await this.page.screenshot({ path: join(folder, file), animations: 'disabled' });
  }
}
