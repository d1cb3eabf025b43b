import { wordingOf, type NumberKind, type NumberRange, type Place } from './number-wording';

/** Every sum that a row of places makes of exactly these words. */
function sums(places: readonly Place[], words: string): number[] {
  const [place, ...rest] = places;
  if (!place) return words === '' ? [0] : [];
  return place.flatMap(([said, adds]) => {
    if (said === '') return sums(rest, words).map((sum) => sum + adds);
    if (words !== said && !words.startsWith(`${said} `)) return [];
    return sums(rest, words.slice(said.length).trimStart()).map((sum) => sum + adds);
  });
}

/**
 * The number that was said, in the unit that was asked: a gravity as a plain decimal such as 1.054. Nothing where the
 * words are no such number, lie outside the range, or could mean two numbers within it: nothing is ever bent to fit.
 */
export function spokenNumber(kind: NumberKind, words: string, range: NumberRange): number | undefined {
  const { scale, ways } = wordingOf(kind, range);
  const said = words
    .toLowerCase()
    .replaceAll(/[-\s]+/g, ' ')
    .trim();
  const numbers = new Set(
    ways
      .flatMap((places) => sums(places, said))
      .map((sum) => sum / scale)
      .filter((number) => number >= range.lowest && number <= range.highest),
  );
  return numbers.size === 1 ? [...numbers][0] : undefined;
}
