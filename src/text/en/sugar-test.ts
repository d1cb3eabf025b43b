import type { Formats } from '../formats';

/** A sugar test: the one piece of evidence that the limit of dryness yields to. */
export const sugarTest = {
  title: 'A sugar test',
  why: 'A hydrometer feels weight, not sugar: a heavy wine can be dry and read above its limit. A test for sugar in wine settles that.',
  how: 'Use a test that is made for sugar in wine, and follow its own sheet. Take a fresh sample, shake its gas out, and test before anything sweet goes in. If the colour lies between two fields, take the higher one.',
  label: 'Sugar that the test shows',
  unit: 'grams in a litre',
  hint: 'In figures, 0 to 300. If the test tells per cent, 0.2 % is 2 grams in a litre.',
  misread: (given: string) =>
    `“${given}” is not between 0 and 300 grams in a litre. Look at the test again, and type it in figures.`,
  right: (grams: number, f: Formats) => `${f.grams(grams)} in a litre. Right?`,
  /** 2 g/L or less counts as dry. */
  counts: (grams: number, f: Formats) =>
    `${f.grams(grams)} of sugar in a litre: that counts as dry, whatever the limit says. The readings must still agree, and the wine must still be warm.`,
  doesNotCount: (grams: number, f: Formats) =>
    `${f.grams(grams)} of sugar in a litre is more than the ${f.grams(2)} that count as dry. It is kept, and the limit stays as it was. Leave the wine warm, and test again when the gravity has stopped falling.`,
};
