import { describe, expect, test } from 'vitest';
import { codesOf } from '../../../tests/story/told';
import type { Celsius } from '../unit';
import { mustWarmEnough, stricterPitch } from './must-warm-enough';

type Said = ReturnType<typeof codesOf>;

describe('the must is warm enough for yeast', () => {
  const range = stricterPitch({ lowest: 15 as Celsius, highest: 30 as Celsius });
  test('within house limits, however wide the sheet', () =>
    expect(range).toEqual({ lowest: 18, highest: 28 }));
  test.each<[must: number | undefined, said: Said]>([
    [undefined, ['must-not-measured']],
    [17.9, ['must-too-cold']],
    [18, 'open'],
    [28, 'open'],
    [28.1, ['must-too-warm']],
  ])('%s °C: %s', (must, said) =>
    expect(codesOf(mustWarmEnough(must as Celsius | undefined, range))).toEqual(said),
  );
});
