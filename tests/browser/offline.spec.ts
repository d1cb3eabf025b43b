import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { begin, expect, firstAct, heading, load, news, test } from './site';

test.beforeEach(() => test.slow());

/** How the fonts that are shipped came; those that a device has of its own, or lacks, are not asked. */
const ownFonts = (page: Page) =>
  page.evaluate(async () => {
    await document.fonts.ready;
    return [...document.fonts]
      .filter(({ family }) => !family.includes('fallback'))
      .map(({ status }) => status);
  });

for (const path of ['/', '/a/shelf/'])
  test.describe(`served at ${path}, with the server stopped after the first load`, () => {
    test.use({ path });

    test('a batch is begun, goes on, and is where it was after a reload', async ({ page, site }) => {
      await load(page);
      await site.stop();
      await expect(fetch(site.address)).rejects.toThrow();
      const bench = await begin(page);
      await firstAct(bench);
      const second = (await heading(page).textContent()) ?? '';
      await page.reload();
      await expect(heading(page)).toHaveText(second);
      await expect(news(page)).toHaveText('');
    });
  });

test.describe('served at a longer path, with the server stopped after the first load', () => {
  test.use({ path: '/a/shelf/' });

  test('every address opens afresh, the batch’s own too', async ({ page, site, context }) => {
    await load(page);
    await begin(page);
    const { hash } = new URL(page.url());
    await site.stop();
    await page.close();
    for (const [address, title] of [
      ['', 'Fallbright'],
      ['index.html#/help', 'Help'],
      ['?from=a-link#/settings', 'Settings'],
      [hash, 'Shelf two: Check the box'],
      [`${hash}/journal`, 'Shelf two'],
    ] as const) {
      const opened = await context.newPage();
      await opened.goto(`./${address}`);
      await expect(heading(opened)).toBeVisible();
      await expect(opened).toHaveTitle(new RegExp(title));
      await expect.poll(() => ownFonts(opened)).toEqual(['loaded', 'loaded']);
      await opened.close();
    }
  });
});

test('each file of ours is kept once; the pictures for the system not at all, and the ears once they are turned on', ({
  site,
}) => {
  const files = readdirSync(site.folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) =>
      join(parentPath, name)
        .slice(site.folder.length + 1)
        .replaceAll('\\', '/'),
    );
  const wanted = files.filter((file) => !/^(service-worker\.js|robots\.txt|ear\/.*|.*\.png)$/.test(file));
  expect(
    site
      .listed()
      .map(({ url }) => url)
      .toSorted(),
  ).toEqual(wanted.toSorted());
  expect(wanted).toEqual(
    expect.arrayContaining(['index.html', 'icon.svg', 'kit-sheet.schema.json', 'batch-file.schema.json']),
  );
});

test.describe('a browser that keeps nothing for use without a network', () => {
  const REFUSALS: [how: string, refuse: () => void][] = [
    [
      'refuses',
      () => {
        ServiceWorkerContainer.prototype.register = () =>
          Promise.reject(new DOMException('refused', 'SecurityError'));
      },
    ],
    [
      'does not know service workers',
      () => void Reflect.deleteProperty(Navigator.prototype, 'serviceWorker'),
    ],
  ];
  for (const [how, refuse] of REFUSALS)
    test(`${how}: it is said once, and all goes on`, async ({ page }) => {
      await page.addInitScript(refuse);
      await page.goto('./');
      await expect(news(page)).toContainText('does not keep Fallbright for use without a network');
      const bench = await begin(page);
      await firstAct(bench);
      await page.reload();
      await expect(page).toHaveTitle(/^Shelf two/);
      await expect(news(page)).toHaveText('');
    });

  test('has no room left: it is said, and all goes on', async ({ page, site }) => {
    const devtools = await page.context().newCDPSession(page);
    const { origin } = new URL(site.address);
    await devtools.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1000 });
    await page.goto('./');
    await expect(news(page)).toContainText('does not keep Fallbright for use without a network');
    await devtools.send('Storage.overrideQuotaForOrigin', { origin });
    await begin(page);
  });
});

test('it can be installed, under its own name and icons, in the colours of its page', async ({ page }) => {
  await load(page);
  const devtools = await page.context().newCDPSession(page);
  const { errors } = await devtools.send('Page.getAppManifest');
  expect(errors).toEqual([]);
  const { installabilityErrors } = await devtools.send('Page.getInstallabilityErrors');
  expect(installabilityErrors.map(({ errorId }) => errorId).filter((id) => id !== 'in-incognito')).toEqual(
    [],
  );

  const seen = await page.evaluate(async () => {
    type Manifest = {
      name: string;
      theme_color: string;
      background_color: string;
      icons: { src: string; sizes: string; type: string; purpose?: string }[];
      screenshots: { src: string; sizes: string; type: string }[];
    };
    const link = document.querySelector<HTMLLinkElement>('link[rel="manifest"]')!;
    const manifest = (await (await fetch(link.href)).json()) as Manifest;
    const sizeOf = async (address: string) => {
      const picture = new Image();
      picture.src = new URL(address, link.href).href;
      await picture.decode();
      return `${picture.naturalWidth}x${picture.naturalHeight}`;
    };
    const pictures = [...manifest.icons, ...manifest.screenshots].filter(({ type }) => type === 'image/png');
    const drawn = document.createElement('canvas').getContext('2d', { willReadFrequently: true })!;
    const hex = (colour: string) => {
      drawn.fillStyle = colour;
      drawn.fillRect(0, 0, 1, 1);
      const [red = 0, green = 0, blue = 0] = drawn.getImageData(0, 0, 1, 1).data;
      return `#${[red, green, blue].map((part) => part.toString(16).padStart(2, '0')).join('')}`;
    };
    const ground = (theme: string) => {
      document.documentElement.dataset['theme'] = theme;
      return hex(getComputedStyle(document.documentElement).backgroundColor);
    };
    const bars = [...document.querySelectorAll<HTMLMetaElement>('meta[name="theme-color"]')];
    return {
      name: manifest.name,
      declared: pictures.map(({ sizes }) => sizes),
      measured: await Promise.all(pictures.map(({ src }) => sizeOf(src))),
      touch: await sizeOf(document.querySelector<HTMLLinkElement>('link[rel="apple-touch-icon"]')!.href),
      colours: [manifest.theme_color, manifest.background_color, ...bars.map(({ content }) => content)],
      grounds: { light: ground('light'), dark: ground('dark') },
    };
  });
  expect(seen.name).toBe('Fallbright');
  expect(seen.measured).toEqual(seen.declared);
  expect(seen.touch).toBe('180x180');
  const { light, dark } = seen.grounds;
  expect(seen.colours).toEqual([dark, dark, light, dark]);
});
