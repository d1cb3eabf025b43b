import { numberGrammar, type NumberAsked } from './number-grammar';

/** Words that stand for whatever else is said. The rarer the weight, the less readily speech is taken for them. */
export type Decoys = { words: readonly string[]; weight: number };

export type Offer = {
  /** What the maker can say now, as it is written in `text/`. */
  phrases: readonly string[];
  /** The number that is asked now. */
  numbers?: NumberAsked;
  decoys: Decoys;
};

/** A phrase as the pronouncing dictionary spells it. */
export const asHeard = (phrase: string): string => phrase.toLowerCase().replaceAll('’', "'");

/**
 * What the engine listens for, as a JSGF grammar: one of the phrases on offer, the number that is asked, or any row of
 * decoys. What is not in it cannot be heard.
 */
export function grammarFor({ phrases, numbers, decoys }: Offer): string {
  const rules = [
    ...phrases.map(asHeard),
    ...(numbers ? ['<number>'] : []),
    ...(decoys.words.length > 0 ? ['<decoy>+'] : []),
  ];
  const weight = decoys.weight.toExponential();
  return [
    '#JSGF V1.0;',
    'grammar ears;',
    `public <heard> = ${rules.join(' | ')};`,
    ...(numbers ? [`<number> = ${numberGrammar(numbers)};`] : []),
    ...(decoys.words.length > 0
      ? [`<decoy> = ${decoys.words.map((word) => `/${weight}/ ${word}`).join(' | ')};`]
      : []),
    '',
  ].join('\n');
}
