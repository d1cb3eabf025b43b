import { loadavg } from 'node:os';
import { fileURLToPath } from 'node:url';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import type { Page } from '@playwright/test';
import { build } from 'vite';
import type { Instant } from '../../../src/domain/unit';
import { builtInSheets } from '../../../src/procedure/kits';
import { Maker, normalWine } from '../../story/maker';
import { serve } from '../../tools/serve.mjs';
import { BenchPage } from '../bench';
import { bringIn } from '../brought-in';
import { expect, test } from '../fixtures';
import { percentile, timedPress } from './key-to-paint';

/** A trace takes a picture of the whole page at every press, and would be most of what is measured. */
test.use({ trace: 'off' });

/** Figures to look at. None of them passes or fails: a busy machine is no fault of the app. */

/** Acts one after the other that ask for nothing but the word that they are done. */
const IN_A_ROW = [/where the vessel/, /Wash/, /Rinse/, /saniti/i];
const BATCHES = 8;

const say = (line: string) => console.log(`  ${line}`);

/** The smallest page of the same kind, built on the spot; where it is served. */
async function counterServed(folder: string): Promise<string> {
  const root = fileURLToPath(new URL('../../bench/counter', import.meta.url));
  await build({
    configFile: false,
    logLevel: 'error',
    root,
    base: './',
    plugins: [svelte({ configFile: false })],
    build: { outDir: folder, emptyOutDir: true },
  });
  return `http://localhost:${await serve(folder, 0)}/`;
}

/** As many presses on a counter: one that keeps every count on the disk before it shows it, or none at all. */
async function counted(page: Page, address: string, presses: number): Promise<number[]> {
  await page.goto(address);
  await expect(page.getByRole('heading')).toHaveText('0');
  const times: number[] = [];
  while (times.length < presses) times.push(await timedPress(page));
  await page.close();
  return times;
}

/** Batches begun an hour ago that stand at the first act of the row. */
function makerAt(nth: number): Maker {
  const sheet = builtInSheets[nth % builtInSheets.length]!;
  const maker = new Maker(sheet, normalWine(sheet), {
    at: (Date.now() - 3_600_000) as Instant,
    offsetMinutes: 0,
  });
  while (maker.act?.kind !== 'do') maker.answer();
  return maker;
}

test('from a key press to the next act, as painted', async ({ page, browser }, info) => {
  test.setTimeout(300_000);
  await page.goto('/');
  const bench = new BenchPage(page);
  const acts: number[] = [];
  for (let nth = 0; nth < BATCHES; nth += 1) {
    await bringIn(page, makerAt(nth), `shelf-${String(nth)}`);
    for (const heading of IN_A_ROW) {
      await bench.heed();
      await expect(bench.heading).toHaveText(heading);
      acts.push(await timedPress(page));
    }
    await page.goto('/#/');
  }
  const counter = await counterServed(info.outputPath('counter'));
  const bare = await counted(await browser.newPage(), counter, acts.length);
  const kept = await counted(await browser.newPage(), `${counter}#kept`, acts.length);

  say(`${String(acts.length)} acts, processor slowed down 6 times, load ${loadavg()[0]!.toFixed(1)}:`);
  for (const [name, share] of [
    ['p95', 0.95],
    ['median', 0.5],
  ] as const) {
    const ours = percentile(acts, share);
    const beside = (times: readonly number[]) => {
      const theirs = percentile(times, share);
      return `${theirs.toFixed(0)} ms (${(ours / theirs).toFixed(1)} times as long)`;
    };
    say(`key press to the next act painted, ${name}: ${ours.toFixed(0)} ms`);
    say(`  a bare counter ${beside(bare)}; one that keeps its count on the disk first ${beside(kept)}`);
  }
  expect(acts.length).toBeGreaterThanOrEqual(30);
});

/** What was asked for until this stood on the screen, as it was sent. */
async function fetchedUntil(page: Page, shown: string) {
  await page.waitForFunction((mark) => performance.getEntriesByName(mark).length > 0, shown);
  return page.evaluate((mark) => {
    const [{ startTime: until } = { startTime: Infinity }] = performance.getEntriesByName(mark);
    return performance
      .getEntries()
      .filter((entry) => entry instanceof PerformanceResourceTiming)
      .filter(({ startTime }) => startTime < until)
      .map(({ name, encodedBodySize }) => ({
        file: new URL(name).pathname.replace(/^.*\//, ''),
        kib: encodedBodySize / 1024,
      }));
  }, shown);
}

test('what is fetched until the first screen, and until the first act', async ({ page }) => {
  // The files that are kept for use without a network are not what anybody waits for.
  await page.addInitScript(() => {
    ServiceWorkerContainer.prototype.register = () => new Promise(() => undefined);
    new MutationObserver((_, observer) => {
      if (!document.querySelector('main input[type="checkbox"]')) return;
      performance.mark('first act');
      observer.disconnect();
    }).observe(document, { subtree: true, childList: true });
  });
  const tell = async (until: string) => {
    const files = await fetchedUntil(page, until);
    const kib = (of: RegExp) =>
      files.filter(({ file }) => of.test(file)).reduce((sum, { kib: each }) => sum + each, 0);
    say(`until the ${until}, as sent: ${kib(/./).toFixed(1)} KiB in ${String(files.length)} files`);
    say(
      `  scripts and styles ${kib(/\.(js|css)$/).toFixed(1)} KiB, letters ${kib(/\.woff2$/).toFixed(1)} KiB`,
    );
    return files.filter(({ file }) => /\.(js|css)$/.test(file));
  };
  await page.goto('/');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Fallbright');
  await page.evaluate(() => document.fonts.ready);
  await page.evaluate(() => performance.mark('first screen'));
  const first = await tell('first screen');
  await new BenchPage(page).begin(/Hedge Lantern/, 'Shelf two');
  await expect(page).toHaveTitle(/^Shelf two: Check the box/);
  const act = await tell('first act');
  for (const { file, kib } of act.toSorted((a, b) => b.kib - a.kib))
    say(`  ${kib.toFixed(1).padStart(6)} KiB  ${file}`);
  expect(act.length).toBeGreaterThan(first.length);
});
