import { describe, expect, test } from 'vitest';
import { codesOf, readingTold } from '../../../tests/story/told';
import type { Gravity } from '../gravity';
import type { Litres } from '../unit';
import { litresOver, mustMixed } from './must-mixed';

type Said = ReturnType<typeof codesOf>;

describe('the must is mixed', () => {
  const mixed = (gravities: number[], stirredSeconds = 240) =>
    mustMixed({
      readings: gravities.map((gravity, hours) => readingTold({ gravity, hours }, hours)),
      stirredSeconds,
      stirSeconds: 240,
      range: { lowest: 10620 as Gravity, highest: 10720 as Gravity },
      batch: 23 as Litres,
    });
  test.each<[story: string, gravities: number[], seconds: number, said: Said]>([
    ['in the range, both ends included', [10620], 240, 'open'],
    ['not without a reading', [], 240, ['no-start-reading']],
    ['not a second short of the timer', [10680], 239, ['under-stirred']],
    ['not below the range at the first reading', [10619], 240, ['start-outside']],
    ['not above it', [10721], 240, ['start-outside']],
    ['recorded and on when the second is outside still', [10590, 10600], 240, 'open'],
  ])('%s', (_, gravities, seconds, said) => expect(codesOf(mixed(gravities, seconds))).toEqual(said));

  test('says by how many litres it is out: 23 L made up to 27.3 L are 4.3 L over', () => {
    const diluted = 10000 + (620 * 23) / 27.3;
    expect(
      litresOver(diluted as Gravity, { lowest: 10620 as Gravity, highest: 10720 as Gravity }, 27.3 as Litres),
    ).toBeCloseTo(4.3, 6);
  });

  test('and by how many too few: 20.7 L of what 23 L would hold at the upper end are 2.3 L short', () =>
    expect(
      litresOver(
        (10_000 + (720 * 23) / 20.7) as Gravity,
        { lowest: 10620 as Gravity, highest: 10720 as Gravity },
        20.7 as Litres,
      ),
    ).toBeCloseTo(-2.3, 6));
});
