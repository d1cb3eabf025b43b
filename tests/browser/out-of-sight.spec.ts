import { writeFileSync } from 'node:fs';
import { normalWine, Maker } from '../story/maker';
import { builtInSheets } from '../../src/procedure/kits';
import type { KitSheet } from '../../src/procedure/kit-sheet';
import type { Instant } from '../../src/domain/unit';
import { writeBatchFile } from '../../src/workflow/batch-file';
import { expect, test } from './fixtures';
import { RawBrowser, type RawPage } from './raw-browser';
import { madeUpVoice } from './spoken';

/** Long enough for the page to be put out of sight, short enough to wait for. */
const STIR_SECONDS = 12;

/** The light fruit wine, its sulphite just added, so that its stir is next, at this very minute. */
function batchAtAStir(): string {
  const [hedge] = builtInSheets.filter(({ id }) => id === 'hedge-lantern') as [KitSheet];
  const sachets = hedge.sachets.map((sachet) =>
    sachet.id === 'sulphite' ? { ...sachet, stirSeconds: STIR_SECONDS } : sachet,
  );
  const sheet = { ...hedge, sachets };
  const arrive = (begun: number) => {
    const maker = new Maker(sheet, normalWine(sheet), { at: begun as Instant, offsetMinutes: 0 });
    maker.goTo('stabilise');
    while (maker.act?.kind !== 'stir') maker.answer();
    return maker;
  };
  // A story takes as long whenever it begins, but for the hours of the day: it ends shortly before now.
  const now = Date.now();
  const took = arrive(now).now.at - now;
  const maker = arrive(now - took - 36 * 3_600_000);
  return writeBatchFile({ id: 'shelf-two', name: 'Shelf two', ...maker.input, sheet }, maker.journal);
}

const lines = (page: RawPage) => page.evaluate<string[]>('globalThis.spoken.lines');
const words = (page: RawPage) => page.evaluate<string>('document.body.innerText');

test('a stir that ends while the page is out of sight is called all the same, and shows how late it is', async ({
  baseURL,
}, info) => {
  test.setTimeout(120_000);
  const patiently = expect.configure({ timeout: 20_000 });
  const file = info.outputPath('shelf-two.batch.json');
  writeFileSync(file, batchAtAStir());
  const browser = await RawBrowser.open();
  try {
    const page = await browser.newPage();
    await page.ask('Page.enable');
    await page.ask('Page.addScriptToEvaluateOnNewDocument', { source: `(${madeUpVoice.toString()})()` });
    await page.ask('Page.navigate', { url: baseURL });
    await patiently.poll(() => words(page)).toContain('Bring in a batch file');
    await page.chooseFile('Bring in a batch file', file);
    await patiently.poll(() => words(page)).toContain('Shelf two is here');
    await page.evaluate("location.hash = '#/batch/shelf-two'");
    await patiently.poll(() => page.press('start the clock')).toBe(true);
    await patiently.poll(() => words(page)).toContain('finish stirring');

    await browser.newPage();
    await patiently.poll(() => page.evaluate('document.visibilityState')).toBe('hidden');
    expect((await lines(page)).filter((line) => /time is up/i.test(line))).toEqual([]);
    await patiently.poll(async () => (await lines(page)).join(' ')).toMatch(/time is up/i);
    expect(await page.evaluate('document.visibilityState')).toBe('hidden');

    await page.toFront();
    await patiently.poll(() => words(page)).toMatch(/Time was up \d+ seconds? ago|Time is up/);
    expect(await page.press('that is done')).toBe(true);
    await patiently.poll(() => words(page)).toContain('Potassium sorbate');
  } finally {
    await browser.close();
  }
});
