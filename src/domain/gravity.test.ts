import { describe, expect, test } from 'vitest';
import { parseGravity } from './gravity';

describe('a hydrometer reading, typed', () => {
  test.each([
    ['996', 9960],
    ['0.996', 9960],
    ['0,996', 9960],
    ['.996', 9960],
    [' 1.054 ', 10540],
    ['1054', 10540],
    ['994.5', 9945],
    ['0.9945', 9945],
    ['0.980', 9800],
    ['1.170', 11700],
  ])('%s is understood', (given, value) => expect(parseGravity(given)).toEqual({ ok: true, value }));

  test.each(['0.9', '1.3', '', 'dry', '54', '1.054.2', '-1', '0.9799', '1.1701', '1e3', 'Infinity'])(
    '"%s" is refused, and given back as it was typed',
    (given) =>
      expect(parseGravity(given)).toEqual({
        ok: false,
        problem: { code: 'gravity-misread', given, lowest: 9800, highest: 11700 },
      }),
  );
});
