import { sorbicAcidFrom } from '../domain/sums/sorbic-acid-from';
import { sulphurDioxideFrom } from '../domain/sums/sulphur-dioxide-from';
import type { KitSheet } from './kit-sheet';

type Dosed = 'sulphite' | 'sorbate';

/** What a gram brings: linear, so that a sheet with a slipped decimal point is weighed as well. */
const PER_GRAM: Record<Dosed, (litres: number) => number> = {
  sulphite: (litres) => sulphurDioxideFrom({ metabisulphiteGrams: 1, litres }),
  sorbate: (litres) => sorbicAcidFrom({ sorbateGrams: 1, litres }),
};

/**
 * Total sulphur dioxide, or sorbic acid, that a sheet's sachets bring into so much wine: mg/L. Only what is printed can
 * be weighed: sachets with one content and a mass. Nothing, where there are none.
 */
export function printedDose({ sachets }: KitSheet, contents: Dosed, litres: number): number | undefined {
  const weighed = sachets.flatMap(({ contents: held, grams, count }) =>
    grams !== undefined && held.length === 1 && held[0] === contents ? [grams * count] : [],
  );
  return weighed.length === 0
    ? undefined
    : weighed.reduce((sum, grams) => sum + grams, 0) * PER_GRAM[contents](litres);
}
