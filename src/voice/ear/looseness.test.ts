import { expect, test } from 'vitest';
import { isWithin, LOOSEST, loosenessOf } from './looseness';

const word = (from: number, to: number) => ({ word: 'word', from, to, score: -1 });

test('words stand apart by what lies between them, and are followed by what lies behind the last', () => {
  const loose = loosenessOf({ segments: [word(0.2, 0.5), word(0.6, 0.9), word(1, 1.2)], seconds: 1.5 });
  expect(loose?.gaps).toBeCloseTo(0.2);
  expect(loose?.tail).toBeCloseTo(0.3);
  expect(isWithin(loose, LOOSEST)).toBe(true);
});

test.each([
  ['stand far apart', [word(0, 0.5), word(1, 1.5)], 1.6],
  ['are followed by much', [word(0, 0.5)], 1.2],
  ['are none', [], 1],
])('words that %s are too loose', (_, segments, seconds) =>
  expect(isWithin(loosenessOf({ segments, seconds }), LOOSEST)).toBe(false),
);
