import { describe, expect, test } from 'vitest';
import { randomFrom } from '../../domain/random-from';
import { ROUNDS, roundsFrom, type Round } from './round';
import { seen } from './seen';

const SEEDS = Array.from({ length: 200 }, (_, seed) => seed);
const every = SEEDS.flatMap((seed) =>
  ([10, 20] as const).flatMap((division) => roundsFrom(randomFrom(seed), division)),
);
const hurdleOf = ({ held, eye }: Round) => held?.by ?? (eye === 'level' ? 'none' : eye);

describe('ten rounds', () => {
  test('have every hurdle twice, in an order of their own', () => {
    const orders = SEEDS.slice(0, 20).map((seed) => roundsFrom(randomFrom(seed), 10).map(hurdleOf));
    for (const order of orders)
      expect(order.toSorted()).toEqual([
        'above',
        'above',
        'below',
        'below',
        'bubbles',
        'bubbles',
        'none',
        'none',
        'wall',
        'wall',
      ]);
    expect(new Set(orders.map(String)).size).toBeGreaterThan(15);
    expect(orders[0]).toHaveLength(ROUNDS);
  });

  test('are the same for the same chance', () =>
    expect(roundsFrom(randomFrom(7), 20)).toEqual(roundsFrom(randomFrom(7), 20)));

  test('read as a wine or a must may', () =>
    expect(every.filter(({ truth }) => truth < 9880 || truth > 11_000 || truth % 10 !== 0)).toEqual([]));

  test('half of them are near dryness', () =>
    expect(every.filter(({ truth }) => truth <= 10_100).length).toBeGreaterThanOrEqual(every.length / 2));
});

describe('what is seen', () => {
  test('bubbles lift it: the number at the surface is too high until they are spun off', () => {
    const lifted = every.filter(({ held }) => held?.by === 'bubbles');
    for (const round of lifted) {
      expect(seen(round, { eye: 'level', freed: false }).flat).toBeGreaterThan(round.truth);
      expect(seen(round, { eye: 'level', freed: true }).flat).toBe(round.truth);
    }
  });

  test('the rim stands higher on the stem, at a lower number', () => {
    const [round] = every;
    const { rim, flat } = seen(round!, { eye: 'level', freed: true });
    expect(rim).toBeLessThan(flat);
  });

  test('the near edge lies lower from above, higher from below, and at the flat at eye level', () => {
    const [round] = every;
    const edge = (eye: 'above' | 'level' | 'below') => seen(round!, { eye, freed: true });
    expect(edge('above').edge).toBeGreaterThan(edge('above').flat);
    expect(edge('below').edge).toBeLessThan(edge('below').flat);
    expect(edge('level').edge).toBe(edge('level').flat);
  });
});
