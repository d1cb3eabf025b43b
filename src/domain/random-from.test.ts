import { expect, test } from 'vitest';
import { randomFrom } from './random-from';

const draw = (seed: number, times: number) => {
  const random = randomFrom(seed);
  return Array.from({ length: times }, () => random());
};

test('the same seed gives the same numbers, another gives others', () => {
  expect(draw(1, 5)).toEqual(draw(1, 5));
  expect(draw(1, 5)).not.toEqual(draw(2, 5));
});

test('they are even over [0, 1)', () => {
  const tenths = draw(42, 10_000).reduce<number[]>((counts, number) => {
    const tenth = Math.floor(number * 10);
    counts[tenth] = (counts[tenth] ?? 0) + 1;
    return counts;
  }, []);
  expect(tenths).toHaveLength(10);
  for (const count of tenths) expect(Math.abs(count - 1000)).toBeLessThan(120);
});
