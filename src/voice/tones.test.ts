import { describe, expect, test } from 'vitest';
import { TONES, type Tone } from './tones';

const tones = Object.entries(TONES) as [Tone, (typeof TONES)[Tone]][];
const total = (rhythm: readonly number[]): number => rhythm.reduce((sum, part) => sum + part, 0);

describe('tones', () => {
  test('are low: water and ageing ears take the high ones', () =>
    expect(tones.filter(([, { hertz }]) => hertz > 400 || hertz < 150)).toEqual([]));

  test('begin and end with sound', () =>
    expect(tones.filter(([, { rhythm }]) => rhythm.length % 2 === 0)).toEqual([]));

  test('are told apart by rhythm alone: by the number of their beats, or by half their length', () => {
    const alike = tones.flatMap(([one, a]) =>
      tones
        .filter(([other]) => one < other)
        .filter(([, b]) => a.rhythm.length === b.rhythm.length)
        .filter(
          ([, b]) =>
            Math.max(total(a.rhythm), total(b.rhythm)) < 1.25 * Math.min(total(a.rhythm), total(b.rhythm)),
        )
        .map(([other]) => `${one} and ${other}`),
    );
    expect(alike).toEqual([]);
  });
});
