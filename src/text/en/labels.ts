import type { Formats } from '../formats';
import type { Interval } from '../../domain/sums/ground/interval';

/** The sheet of bottle labels, to print. */
export const labels = {
  title: (name: string) => `Labels of ${name}`,
  lead: 'One for each bottle, to print, cut and paste. What went into the wine, and what was decided against the sheet, comes from the journal.',
  count: 'How many labels',
  countHint: (bottles: string) =>
    `There are ${bottles} bottles. Fewer will do if you write the rest by hand.`,
  countExpected: (bottles: string) => `About ${bottles} bottles are to be expected.`,
  wrongCount: (typed: string, most: string) =>
    `“${typed}” is not a number of labels. Type a whole number from 1 to ${most}.`,
  print: 'print the labels',
  noDate: 'The wine is not bottled yet, so the date is left open.',
  nth: (nth: string, of: string) => `bottle ${nth} of ${of}`,
  alcohol: ({ value }: Interval, f: Formats) => `about ${f.number(value, 1)} % vol`,
  noAlcohol: 'alcohol not known: the start gravity was not read',
  bottled: (date: string) => `bottled ${date}`,
  bottledOpen: 'bottled ____________',
  restUntil: (date: string) => `let it rest until ${date}`,
  contains: (allergens: string) => `contains ${allergens}`,
  noAllergens: 'no sulphite, fish, shellfish, egg or milk was recorded',
  from: (kit: string, edition: string) => `from a boxed kit: ${kit}, edition ${edition}`,
  leftOut: (printed: string, reason: string) => `Without “${printed}”. The reason given: “${reason}”.`,
  guidance:
    'What else a label must say where you live, and whether you may give or sell home-made wine, your local rules tell.',
};
