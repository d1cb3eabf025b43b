import { describe, expect, test } from 'vitest';
import { wordingOf, type NumberKind, type NumberRange, type Place } from './number-wording';

/** All that a row of places can be said as, and what each comes to. */
function sayings([place, ...rest]: readonly Place[]): readonly (readonly [words: string, sum: number])[] {
  if (!place) return [['', 0]];
  const after = sayings(rest);
  return place.flatMap(([words, adds]) =>
    after.map(([more, sum]) => [[words, more].filter(Boolean).join(' '), adds + sum] as const),
  );
}

const ANY: NumberRange = { lowest: 0, highest: 200 };

describe('no words mean two numbers where is asked for', () => {
  test.each<[string, NumberKind, NumberRange]>([
    ['a gravity', 'gravity', ANY],
    ['the gravity of a must', 'gravity', { lowest: 1.01, highest: 1.16 }],
    ['a temperature', 'temperature', ANY],
    ['a count', 'count', ANY],
    ['minutes', 'minutes', ANY],
    ['litres', 'litres', ANY],
    ['gallons', 'gallons', ANY],
  ])('%s', (_, kind, range) => {
    const means = new Map<string, number>();
    const ambiguous: string[] = [];
    for (const [words, sum] of wordingOf(kind, range).ways.flatMap(sayings)) {
      if ((means.get(words) ?? sum) !== sum) ambiguous.push(words);
      means.set(words, sum);
    }
    expect(means.size).toBeGreaterThan(100);
    expect(ambiguous).toEqual([]);
  });
});
