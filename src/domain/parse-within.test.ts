import { expect, test } from 'vitest';
import { parseWithin } from './parse-within';

test.each([
  ['3.4', 3.4],
  [' 3,4 ', 3.4],
  ['2.8', 2.8],
  ['4.2', 4.2],
])('“%s” is %d', (given, value) => expect(parseWithin(given, 'pH', 2.8, 4.2)).toEqual({ ok: true, value }));

test.each(['', 'sour', '2.79', '4.21', '3.4.1', '1e3'])('“%s” is refused, and kept to be told', (given) =>
  expect(parseWithin(given, 'pH', 2.8, 4.2)).toEqual({
    ok: false,
    problem: { code: 'number-misread', given, counting: 'pH', lowest: 2.8, highest: 4.2 },
  }),
);
