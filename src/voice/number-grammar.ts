import { wordingOf, type NumberKind, type NumberRange, type Place } from './number-wording';

export type NumberAsked = NumberRange & { kind: NumberKind };

const alternatives = (all: readonly string[]): string =>
  all.length === 1 ? all.join('') : `(${all.join(' | ')})`;

/** What can stand in one place: in brackets where it may stay empty. */
function standing(words: readonly string[]): string {
  const said = words.filter((word) => word !== '');
  if (said.length === 0) return '';
  return said.length < words.length ? `[${said.join(' | ')}]` : alternatives(said);
}

/** A row of places, of which only sums from `least` to `most` remain; nothing where none does. */
function within(places: readonly Place[], least: number, most: number): string | undefined {
  const [place, ...rest] = places;
  if (!place) return least <= 0 && most >= 0 ? '' : undefined;
  const byRest = new Map<string, string[]>();
  place.forEach(([words, adds]) => {
    const after = within(rest, least - adds, most - adds);
    if (after !== undefined) byRest.set(after, [...(byRest.get(after) ?? []), words]);
  });
  if (byRest.size === 0) return undefined;
  const rows = [...byRest].map(([after, words]) => [standing(words), after].filter(Boolean).join(' '));
  const said = rows.filter((row) => row !== '');
  return said.length < rows.length ? `[${said.join(' | ')}]` : alternatives(said);
}

/** The alternatives by which a number can be said where it is asked: none that lies outside its range. */
export function numberGrammar({ kind, lowest, highest }: NumberAsked): string {
  const { scale, ways } = wordingOf(kind, { lowest, highest });
  // Products such as 1.054 × 1000 are a hair off their whole number.
  const [least, most] = [Math.ceil(lowest * scale - 1e-6), Math.floor(highest * scale + 1e-6)];
  return ways
    .map((places) => within(places, least, most))
    .filter((way) => way !== undefined && way !== '')
    .join(' | ');
}
