import { spawn, type ChildProcess } from 'node:child_process';
import { cpSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { BenchPage } from './bench';
import { expect as patient, test as base } from './fixtures';

/** A worker that is installed and takes over meanwhile makes everything else slower. */
const expect = patient.configure({ timeout: 20_000 });

/** A copy of the built app on a server of its own, which can be stopped, and on which a later version can be put. */
export class Site {
  private constructor(
    readonly folder: string,
    readonly address: string,
    private readonly server: ChildProcess,
  ) {}

  static async open(folder: string, path: string): Promise<Site> {
    cpSync('dist', folder, { recursive: true });
    const server = spawn(process.execPath, ['tests/tools/serve.mjs', folder, path]);
    const port = await new Promise<string>((resolve) => {
      server.stdout.on('data', (said: Buffer) => {
        const [, told] = /port (\d+)/.exec(said.toString()) ?? [];
        if (told) resolve(told);
      });
    });
    return new Site(folder, `http://localhost:${port}${path}`, server);
  }

  async stop(): Promise<void> {
    if (this.server.exitCode !== null || this.server.signalCode !== null) return;
    const stopped = new Promise((resolve) => this.server.once('exit', resolve));
    this.server.kill();
    await stopped;
  }

  /** The same app, with another page: what the build of a later version changes. */
  publish(version: string): void {
    this.#change('index.html', '</head>', `<meta name="version" content="${version}" /></head>`);
    const { revision } = this.listed().find(({ url }) => url === 'index.html')!;
    this.#change('service-worker.js', revision!, version.padStart(32, '0'));
  }

  /** What the service worker keeps, as its own text lists it. */
  listed(): { url: string; revision: string | null }[] {
    const [list = ''] = /\[\{"revision".*?\}\]/.exec(this.#read('service-worker.js')) ?? [];
    return JSON.parse(list) as { url: string; revision: string | null }[];
  }

  #read(file: string): string {
    return readFileSync(join(this.folder, file), 'utf8');
  }

  #change(file: string, from: string, to: string): void {
    expect(this.#read(file)).toContain(from);
    writeFileSync(join(this.folder, file), this.#read(file).replace(from, to));
  }
}

export const test = base.extend<{ path: string; site: Site }>({
  /** Where on its server the app lies. */
  path: ['/', { option: true }],
  site: async ({ path }, use, info) => {
    const site = await Site.open(info.outputPath('site'), path);
    await use(site);
    await site.stop();
  },
  baseURL: async ({ site }, use) => {
    await use(site.address);
  },
});

export const heading = (page: Page) => page.getByRole('heading', { level: 1 });
export const news = (page: Page) => page.getByRole('complementary', { name: 'Versions' });

/** The first load, until all is kept. */
export async function load(page: Page): Promise<void> {
  await page.goto('./');
  await expect(heading(page)).toHaveText('Fallbright');
  await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller?.state)).toBe('activated');
}

/** A batch at its first act. */
export async function begin(page: Page): Promise<BenchPage> {
  const bench = new BenchPage(page);
  await bench.begin(/Hedge Lantern/, 'Shelf two');
  await expect(page).toHaveTitle(/^Shelf two: Check the box/);
  return bench;
}

/** The first act of a batch, so that the second is on the screen. */
export const firstAct = (bench: BenchPage) => bench.act(/./, () => bench.allThere());

export { expect };
