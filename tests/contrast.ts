/**
 * Colours as a screen shows them and how far apart they look.
 * OKLCH to linear sRGB: CSS Color Module Level 4, §18 "Sample code for color conversions"; the chroma of what no screen can
 * show is reduced after §13.2 "CSS gamut mapping to an RGB destination", by bisection without its local clipping.
 * Relative luminance and contrast ratio: WCAG 2.2, definitions of those terms.
 */
export type Oklch = { lightness: number; chroma: number; hue: number };
type Rgb = readonly [number, number, number];

const EPSILON = 0.000_1;

function linearOf({ lightness, chroma, hue }: Oklch): Rgb {
  const angle = (hue * Math.PI) / 180;
  const [a, b] = [chroma * Math.cos(angle), chroma * Math.sin(angle)];
  const l = (lightness + 0.396_337_777_4 * a + 0.215_803_757_3 * b) ** 3;
  const m = (lightness - 0.105_561_345_8 * a - 0.063_854_172_8 * b) ** 3;
  const s = (lightness - 0.089_484_177_5 * a - 1.291_485_548 * b) ** 3;
  return [
    4.076_741_662_1 * l - 3.307_711_591_3 * m + 0.230_969_929_2 * s,
    -1.268_438_004_6 * l + 2.609_757_401_1 * m - 0.341_319_396_5 * s,
    -0.004_196_086_3 * l - 0.703_418_614_7 * m + 1.707_614_701 * s,
  ];
}

const isShown = (rgb: Rgb): boolean => rgb.every((part) => part >= -EPSILON && part <= 1 + EPSILON);
const clipped = ([r, g, b]: Rgb): Rgb => [clip(r), clip(g), clip(b)];
const clip = (part: number): number => Math.min(1, Math.max(0, part));

/** The two ways in which a browser brings a colour into what the screen can show: cut off, or with less chroma. */
function shownAs(colour: Oklch): Rgb[] {
  const linear = linearOf(colour);
  if (isShown(linear)) return [clipped(linear)];
  let [low, high] = [0, colour.chroma];
  for (let step = 0; step < 24; step += 1) {
    const middle = (low + high) / 2;
    if (isShown(linearOf({ ...colour, chroma: middle }))) low = middle;
    else high = middle;
  }
  return [clipped(linear), clipped(linearOf({ ...colour, chroma: low }))];
}

const luminance = ([r, g, b]: Rgb): number => 0.2126 * r + 0.7152 * g + 0.0722 * b;

/** The contrast ratio of two colours, at its worst whichever way the browser shows them. */
export function contrast(one: Oklch, other: Oklch): number {
  const ratios = shownAs(one).flatMap((a) =>
    shownAs(other).map((b) => {
      const [dark, light] = [luminance(a), luminance(b)].toSorted((x, y) => x - y) as [number, number];
      return (light + 0.05) / (dark + 0.05);
    }),
  );
  return Math.min(...ratios);
}
