import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path/posix';
import { describe, expect, test } from 'vitest';
import { contrast } from './contrast';
import { token, type Theme, type Wine } from './tokens';

const THEMES: readonly Theme[] = ['light', 'dark'];
const TEXT = 7;
const DRAWN = 3;

const GREYS = (lightness: number) => ({ lightness, chroma: 0, hue: 0 });

describe('the contrast of two colours', () => {
  test('black on white is 21 to 1', () => expect(contrast(GREYS(0), GREYS(1))).toBeCloseTo(21, 2));
  test('a colour on itself is 1 to 1', () => expect(contrast(GREYS(0.5), GREYS(0.5))).toBe(1));
  // The mid grey #767676 is the well-known darkest that just reaches 4.5 to 1 on white; OKLCH lightness 0.566 is that grey.
  test('#767676 on white is 4.54 to 1', () => expect(contrast(GREYS(0.566), GREYS(1))).toBeCloseTo(4.54, 1));
  // #ff0000 is oklch(0.62796 0.25768 29.234) in the specification's own examples, and 4.00 to 1 on white.
  test('pure red on white is 4 to 1', () =>
    expect(contrast({ lightness: 0.62796, chroma: 0.25768, hue: 29.234 }, GREYS(1))).toBeCloseTo(4, 1));
});

/** Text colours and the grounds that the bench puts them on. */
const TEXTS = ['ink', 'soft', 'caution'] as const;
const GROUNDS = ['ground', 'glass'] as const;

describe.each(THEMES)('in the %s theme', (theme) => {
  test.each(TEXTS.flatMap((text) => GROUNDS.map((ground) => [text, ground] as const)))(
    'text in %s on %s',
    (text, ground) => expect(contrast(token(text, theme), token(ground, theme))).toBeGreaterThanOrEqual(TEXT),
  );

  test('text on the main pad, which is the ground’s colour on ink', () =>
    expect(contrast(token('ground', theme), token('ink', theme))).toBeGreaterThanOrEqual(TEXT));

  test.each(GROUNDS)('outlines of glass on %s', (ground) =>
    expect(contrast(token('line', theme), token(ground, theme))).toBeGreaterThanOrEqual(DRAWN),
  );

  test.each(['glass', 'water'])('the line of a surface on %s', (ground) =>
    expect(contrast(token('ink', theme), token(ground, theme))).toBeGreaterThanOrEqual(DRAWN),
  );

  test.each(GROUNDS)('water in an airlock on %s', (ground) =>
    expect(contrast(token('water-deep', theme), token(ground, theme))).toBeGreaterThanOrEqual(DRAWN),
  );
});

const CLOUDS = [0, 0.25, 0.5, 0.8, 1];
const WINES: Wine[] = Array.from({ length: 360 }, (_, hue) => hue).flatMap((hue) =>
  CLOUDS.map((cloud) => ({ hue, cloud })),
);
/** The worst of all wines for a pair of tokens. */
const worst = (drawn: string, ground: string, theme: Theme) =>
  WINES.map((wine) => ({
    ...wine,
    ratio: contrast(token(drawn, theme, wine), token(ground, theme, wine)),
  })).reduce((low, each) => (each.ratio < low.ratio ? each : low));

describe.each(THEMES)('wine of every hue, milky to bright, in the %s theme', (theme) => {
  test.each([
    ['wine', 'ground'],
    ['wine', 'glass'],
    ['wine-bright', 'ground'],
    ['wine-bright', 'glass'],
    ['on-wine', 'wine'],
    ['on-wine', 'wine-bright'],
    ['wine-middle', 'ground'],
    ['ink', 'wine-middle'],
    ['sediment', 'wine'],
  ])('%s on %s is seen', (drawn, ground) =>
    expect(worst(drawn, ground, theme).ratio).toBeGreaterThanOrEqual(DRAWN),
  );

  test('a beam in the dark room is seen, and so is wine', () => {
    expect(worst('wine', 'night', 'dark').ratio).toBeGreaterThanOrEqual(DRAWN);
    expect(contrast(token('beam', theme), token('night', theme))).toBeGreaterThanOrEqual(TEXT);
  });
});

describe('what is written on the bench', () => {
  const COLOURS = new Set<string>([...TEXTS, 'ground', 'wood']);
  const ROOMS = /^(bench|cards|choices|drawings|parts|pictures|school)\/\w+\.svelte$/;
  const sources = readdirSync('src/ui', { recursive: true, encoding: 'utf8' })
    .map((path) => path.replaceAll('\\', '/'))
    .filter((path) => ROOMS.test(path))
    .map((path) => join('src/ui', path));
  const used = sources.flatMap((path) => {
    const css = readFileSync(path, 'utf8').split('<style>')[1] ?? '';
    const written = [...css.matchAll(/[\s;{]color: var\(--([a-z-]+)\)/g)];
    const drawn = [...css.matchAll(/(?:^|\n) {2}text \{[^}]*fill: var\(--([a-z-]+)\)/g)];
    return [...written, ...drawn].map(([, name = '']) => ({ path, name }));
  });

  test('is in the colours that are measured here', () => {
    expect(used.length).toBeGreaterThan(30);
    expect(used.filter(({ name }) => !COLOURS.has(name))).toEqual([]);
  });
});
