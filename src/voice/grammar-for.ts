import { numberGrammar, type NumberAsked } from './number-grammar';

/** What the maker can say now. */
export type Offer = {
  /** As they are written in `text/`. */
  phrases: readonly string[];
  /** The number that is asked now. */
  numbers?: NumberAsked;
};

/** A phrase as the pronouncing dictionary spells it. */
export const asHeard = (phrase: string): string => phrase.toLowerCase().replaceAll('’', "'");

const grammar = (...rules: readonly string[]): string =>
  ['#JSGF V1.0;', 'grammar ears;', ...rules.map((rule) => `${rule};`), ''].join('\n');

/**
 * What the engine listens for, as a JSGF grammar: one of the phrases on offer, or the number that is asked. What is not
 * in it cannot be heard; what is in it is found in any talk, and has to be weighed against the decoys.
 */
export function grammarFor({ phrases, numbers }: Offer): string {
  const heard = [...phrases.map(asHeard), ...(numbers ? ['<number>'] : [])];
  const said = `public <heard> = ${heard.join(' | ')}`;
  return numbers ? grammar(said, `<number> = ${numberGrammar(numbers)}`) : grammar(said);
}

/**
 * What the same sounds are set against: any row of decoys, and whole phrases that can be said elsewhere, but are not on
 * offer now. Of those the nearest on offer would often fit better than any row of decoys.
 */
export function grammarAgainst(
  { phrases }: Offer,
  elsewhere: readonly string[],
  decoys: readonly string[],
): string {
  const offered = new Set(phrases.map(asHeard));
  const others = elsewhere.map(asHeard).filter((phrase) => !offered.has(phrase));
  return grammar(`public <talk> = ${['<decoy>+', ...others].join(' | ')}`, `<decoy> = ${decoys.join(' | ')}`);
}
