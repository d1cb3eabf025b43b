import { readFileSync } from 'node:fs';
import { builtInSheets } from '../../../src/procedure/kits';
import { readBatchFile } from '../../../src/workflow/batch-file';
import type { BatchEvent } from '../../../src/workflow/batch-event';
import { makerOf, type KitId } from '../brought-in';
import { BenchPage } from '../bench';
import { expect, test } from '../fixtures';
import { LedByHand } from '../led-by-hand';
import { EverySize } from './every-size';

test.use({ timezoneId: 'UTC' });

const typesOf = (events: readonly BatchEvent[]) => events.map(({ type }) => type);

for (const { id, name } of builtInSheets)
  test(`${name}, from the box to the first taste, through the real screens, at every size`, async ({
    page,
  }) => {
    test.setTimeout(1_800_000);
    const maker = makerOf(id as KitId);
    await page.clock.install({ time: maker.now.at });
    await page.goto('/');
    await new BenchPage(page).begin(new RegExp(name), 'Shelf two');
    const sizes = new EverySize(page, id);
    await new LedByHand(page, maker, sizes.look).toTheEnd();
    await page.goto(`${page.url()}/journal`);
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Keep it as a file' }).first().click();
    const kept = readBatchFile(readFileSync(await (await download).path(), 'utf8'));
    expect(sizes.faults).toEqual({});
    expect(kept.ok && typesOf(kept.value.events)).toEqual(typesOf(maker.journal));
  });
