import { readFileSync } from 'node:fs';
import type { Oklch } from './contrast';

const css = readFileSync('src/ui/styles/tokens.css', 'utf8');
/** Forced colours are the maker's own: what stands before them is ours. */
const ours = css.slice(0, css.indexOf('@media (forced-colors'));
const written = new Map(
  [...ours.matchAll(/--([a-z-]+):\s*((?:light-dark|oklch)\([^;]*\));/g)].map(([, name = '', value = '']) => [
    name,
    value.replaceAll(/\s+/g, ' '),
  ]),
);

export type Theme = 'light' | 'dark';
export type Wine = { hue: number; cloud: number };

/** A colour token of `tokens.css` as it is in a theme, for a wine of some hue that stands so milky. */
export function token(name: string, theme: Theme, { hue, cloud }: Wine = { hue: 0, cloud: 0 }): Oklch {
  const value = written.get(name);
  if (value === undefined) throw new Error(`tokens.css has no colour --${name}`);
  const filled = value
    .replaceAll(/var\(--hue(?:, [^)]*)?\)/g, String(hue))
    .replaceAll(/var\(--cloud(?:, [^)]*)?\)/g, String(cloud))
    .replaceAll(/calc\(([\d.]+) ([+-]) ([\d.]+) \* ([\d.]+)\)/g, (_, first, sign, factor, times) =>
      String(Number(first) + (sign === '+' ? 1 : -1) * Number(factor) * Number(times)),
    );
  const both = [...filled.matchAll(/oklch\(([\d.]+) ([\d.]+) ([\d.]+)\)/g)];
  const [, lightness, chroma, degrees] = (theme === 'light' ? both[0] : both.at(-1)) ?? [];
  if (degrees === undefined) throw new Error(`--${name} is not a colour this test can read: ${filled}`);
  return { lightness: Number(lightness), chroma: Number(chroma), hue: Number(degrees) };
}
