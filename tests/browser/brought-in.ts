import type { Page } from '@playwright/test';
import { normalWine, Maker } from '../story/maker';
import { builtInSheets } from '../../src/procedure/kits';
import type { Instant } from '../../src/domain/unit';
import { writeBatchFile } from '../../src/workflow/batch-file';
import { BenchPage } from './bench';
import { expect } from './fixtures';

export type KitId = 'hedge-lantern' | 'chalk-meadow' | 'ember-quay';

/** A careful maker of a built-in kit, in a place without summer time, so that hours are hours. */
export function makerOf(kit: KitId): Maker {
  const sheet = builtInSheets.find(({ id }) => id === kit)!;
  return new Maker(sheet, normalWine(sheet), { at: Date.UTC(2031, 4, 3, 15) as Instant, offsetMinutes: 0 });
}

/** Hedge Lantern with one stabiliser in, and the sorbate to go in next. */
export function atTheSorbate(): Maker {
  const maker = makerOf('hedge-lantern').goTo('stabilise');
  while (maker.act?.id !== 'add sachet sorbate') maker.answer();
  return maker;
}

/** The batch of a story, brought in as a file from the opening screen and opened on the bench. */
export async function bringIn(page: Page, { sheet, input, journal }: Maker, id = 'shelf-two'): Promise<void> {
  const file = writeBatchFile({ id, name: 'Shelf two', ...input, sheet }, journal);
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Bring in a batch file' }).click();
  await (
    await chooser
  ).setFiles({ name: `${id}.batch.json`, mimeType: 'application/json', buffer: Buffer.from(file) });
  // Every event is judged again on the way in.
  await expect(page.getByText('Shelf two is here')).toBeVisible({ timeout: 20_000 });
  await page.goto(`/#/batch/${id}`);
  await expect(page).toHaveTitle(/^Shelf two:/);
}

/** The same on the day on which the story stands: what a long way by hand would lead to. */
export async function broughtIn(page: Page, maker: Maker): Promise<BenchPage> {
  await page.clock.install({ time: maker.now.at + 60_000 });
  await page.goto('/');
  await bringIn(page, maker);
  return new BenchPage(page);
}
