import { requireWithin } from './ground/require-within';

/** A wine, a water or a pack: litres, SG, % vol, and g/L of sugar, mg/L of total SO₂ and of sorbic acid. */
export type Part = {
  litres: number;
  gravity: number;
  alcohol: number;
  sugar: number;
  sulphurDioxide: number;
  sorbicAcid: number;
};

/** A part as its caller knows it: what is left out is none. */
export type PartGiven = Pick<Part, 'litres' | 'gravity'> & Partial<Part>;

const RANGES: Record<keyof Part, readonly [number, number]> = {
  litres: [0, 100],
  gravity: [0.98, 1.4],
  alcohol: [0, 20],
  sugar: [0, 1000],
  sulphurDioxide: [0, 10_000],
  sorbicAcid: [0, 10_000],
};
const NONE = { alcohol: 0, sugar: 0, sulphurDioxide: 0, sorbicAcid: 0 };

function complete(given: PartGiven): Part {
  const part = { ...NONE, ...given };
  for (const name of Object.keys(RANGES) as (keyof Part)[]) requireWithin(name, part[name], ...RANGES[name]);
  return part;
}

/**
 * What wines, waters and packs make when they are put together.
 * Units        litres, SG 20/20, % vol, g/L and mg/L in and out; sulphur dioxide is total.
 * Range        0–100 L each and not all none, gravity 0.980–1.400, 0–20 % vol, sugar 0–1000 g/L, the others
 *              0–10 000 mg/L.
 * Uncertainty  0.1 % of the volume: what mixing shrinks it by is not counted.
 * Errors       RangeError outside the range.
 * Source       conservation of volume, mass and each substance.
 */
export function blend(given: readonly PartGiven[]): Part {
  const parts = given.map(complete);
  const litres = parts.reduce((sum, part) => sum + part.litres, 0);
  if (!(litres > 0)) throw new RangeError('nothing to blend');
  const shared = (name: keyof Part) =>
    parts.reduce((sum, part) => sum + part.litres * part[name], 0) / litres;
  return {
    litres,
    gravity: shared('gravity'),
    alcohol: shared('alcohol'),
    sugar: shared('sugar'),
    sulphurDioxide: shared('sulphurDioxide'),
    sorbicAcid: shared('sorbicAcid'),
  };
}
