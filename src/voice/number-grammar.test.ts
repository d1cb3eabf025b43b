import { describe, expect, test } from 'vitest';
import { SAID_NUMBERS, RANGES } from '../../tests/voice/corpus/numbers';
import { numberGrammar, type NumberAsked } from './number-grammar';
import { spokenNumber } from './spoken-number';

/** Every row of words that a grammar of words, brackets and bars lets through. */
function sentencesOf(grammar: string): string[] {
  const tokens = grammar.match(/[()[\]|]|[^\s()[\]|]+/g) ?? [];
  let at = 0;
  const either = (): string[] => {
    const all = row();
    while (tokens[at] === '|') {
      at++;
      all.push(...row());
    }
    return all;
  };
  const row = (): string[] => {
    let all = [''];
    while (at < tokens.length && !')]|'.includes(tokens[at] ?? '')) {
      const next = one();
      all = all.flatMap((before) => next.map((after) => `${before} ${after}`.trim()));
    }
    return all;
  };
  const one = (): string[] => {
    const token = tokens[at++] ?? '';
    if (token !== '(' && token !== '[') return [token];
    const inside = either();
    at++;
    return token === '[' ? ['', ...inside] : inside;
  };
  return either();
}

const ASKED: readonly NumberAsked[] = [
  ...Object.values(RANGES),
  { kind: 'gravity', lowest: 0.99, highest: 1.02 },
  { kind: 'gravity', lowest: 1.06, highest: 1.1 },
  { kind: 'count', lowest: 20, highest: 130 },
  { kind: 'gallons', lowest: 1, highest: 6 },
];

describe('the grammar of a number', () => {
  test.each(ASKED)('lets nothing through but a $kind from $lowest to $highest', (asked) => {
    const misread = sentencesOf(numberGrammar(asked)).filter(
      (words) => spokenNumber(asked.kind, words, asked) === undefined,
    );
    expect(misread).toEqual([]);
  });

  test.each(ASKED)('has a way of saying every whole $kind from $lowest to $highest', (asked) => {
    const step = asked.kind === 'gravity' ? 1000 : 1;
    const heard = new Set(
      sentencesOf(numberGrammar(asked)).map((words) =>
        Math.round((spokenNumber(asked.kind, words, asked) ?? Number.NaN) * step),
      ),
    );
    const [first, last] = [Math.ceil(asked.lowest * step - 1e-6), Math.floor(asked.highest * step + 1e-6)];
    const missing = Array.from({ length: last - first + 1 }, (_, nth) => first + nth).filter(
      (number) => !heard.has(number),
    );
    expect(missing).toEqual([]);
  });

  test('knows the ways that people say them', () => {
    const plain = (words: string) => words.replaceAll('-', ' ').replaceAll('litre', 'liter');
    const unknown = SAID_NUMBERS.filter(
      ({ asked, words, value }) =>
        !sentencesOf(numberGrammar(RANGES[asked])).includes(plain(words)) ||
        spokenNumber(RANGES[asked].kind, plain(words), RANGES[asked]) !== value,
    );
    expect(unknown.map(({ asked, words }) => `${asked}: ${words}`)).toEqual([]);
  });
});
