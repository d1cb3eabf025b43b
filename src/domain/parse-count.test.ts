import { expect, test } from 'vitest';
import { parseCount } from './parse-count';

test.each([
  ['30', 30],
  [' 0 ', 0],
  ['500', 500],
])('%s is a count', (given, value) => expect(parseCount(given)).toEqual({ ok: true, value }));

test.each(['', '30.5', '-1', 'thirty', '501', '0x10'])('%s is none', (given) =>
  expect(parseCount(given)).toEqual({ ok: false, problem: { code: 'count-misread', given, highest: 500 } }),
);
