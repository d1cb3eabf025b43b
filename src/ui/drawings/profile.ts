/** A round vessel cut through its middle: half widths by height, from the bottom up, in drawing units. */
export type Profile = readonly (readonly [height: number, halfWidth: number])[];

const SHOULDER = 9;

/** A bucket, a little wider at the top. */
export const BUCKET: Profile = [
  [0, 84],
  [236, 102],
];

/** A glass carboy: straight walls, a round shoulder, a neck. */
export const CARBOY: Profile = [
  [0, 76],
  [3, 84],
  [8, 89],
  [16, 91],
  [150, 92],
  ...Array.from({ length: SHOULDER }, (_, index): [number, number] => {
    const turn = ((index + 1) / SHOULDER) * (Math.PI / 2);
    return [150 + 58 * Math.sin(turn), 24 + 68 * Math.cos(turn)];
  }),
  [246, 24],
];

/** The vessels that hold a batch, by what they are called. */
export const VESSELS = { bucket: BUCKET, carboy: CARBOY };

/** A measuring jug: what the reserve and a sample stand in. */
export const JUG: Profile = [
  [0, 46],
  [6, 52],
  [140, 58],
];

/** Brim to wine: a glass vessel is chosen to be nearly full. */
export const ROOM_IN_GLASS = 1.05;

/** How far the wall stands from the middle at a height. */
export function halfWidthAt(profile: Profile, height: number): number {
  const index = profile.findIndex(([top]) => top >= height);
  const [high, b] = profile.at(index) ?? [0, 0];
  const [low, a] = profile[Math.max(0, index - 1)] ?? [high, b];
  return index > 0 ? a + ((b - a) * (height - low)) / (high - low) : b;
}

/** The height below which a share of the vessel's volume lies, its parts taken as truncated cones. */
export function levelIn(profile: Profile, share: number): number {
  const parts = profile.slice(1).map((top, index) => ({ bottom: profile[index] ?? top, top }));
  const volumes = parts.map(({ bottom, top }) => coneVolume(bottom, top));
  let left = Math.min(1, Math.max(0, share)) * volumes.reduce((sum, volume) => sum + volume, 0);
  for (const [index, { bottom, top }] of parts.entries()) {
    const volume = volumes[index] ?? 0;
    if (left <= volume) return bottom[0] + heightOf(left, bottom, top);
    left -= volume;
  }
  return profile.at(-1)?.[0] ?? 0;
}

type Point = Profile[number];

const coneVolume = ([low, a]: Point, [high, b]: Point): number =>
  ((high - low) * (a * a + a * b + b * b)) / 3;

function heightOf(volume: number, [low, a]: Point, [high, b]: Point): number {
  if (Math.abs(a - b) < 1e-9) return volume / (a * a);
  const slope = (b - a) / (high - low);
  return (Math.cbrt(a ** 3 + 3 * volume * slope) - a) / slope;
}

/** The outline as an SVG path, its bottom at `base` and its middle at `middle`. */
export function outline(profile: Profile, middle: number, base: number): string {
  const side = (sign: 1 | -1) =>
    profile.map(([height, half]) => `${(middle + sign * half).toFixed(1)} ${(base - height).toFixed(1)}`);
  return `M${side(-1).toReversed().join('L')}L${side(1).join('L')}`;
}
