import { describe, expect, test } from 'vitest';
import { BUCKET, levelIn } from './profile';
import { siphonOf } from './siphon';

const BUCKET_OF_30 = { profile: BUCKET, brim: 30 };
const siphon = (crossed: number) => siphonOf(BUCKET_OF_30, 23, crossed, 0.7);
const COURSE = [0, 4, 8, 12, 16, 20, 22].map(siphon);

describe('wine that is siphoned off', () => {
  test('falls in the upper vessel as it rises in the lower', () => {
    const pairs = COURSE.slice(1).map((now, index) => ({ now, before: COURSE[index]! }));
    for (const { now, before } of pairs) {
      expect(now.upperLevel).toBeLessThan(before.upperLevel);
      expect(now.lowerLevel).toBeGreaterThan(before.lowerLevel);
    }
  });

  test('is neither more nor less than it was', () =>
    expect(COURSE.map(({ left, arrived }) => left + arrived)).toEqual(COURSE.map(() => 23)));

  test('is taken in below its surface and above the sediment, to the last', () => {
    const bed = levelIn(BUCKET, 0.7 / 30);
    for (const { inlet, upperLevel } of COURSE) {
      expect(inlet).toBeLessThan(upperLevel);
      expect(inlet).toBeGreaterThan(bed);
    }
  });

  test('leaves the sediment where it is', () => expect(siphon(23).left).toBeCloseTo(0.7, 10));

  test('stood higher before', () => expect(siphon(12).upperBefore).toBeCloseTo(levelIn(BUCKET, 23 / 30), 10));
});
