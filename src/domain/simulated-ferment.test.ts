import { describe, expect, test } from 'vitest';
import { simulatedFerment, type FermentKind } from './simulated-ferment';

const SEEDS = Array.from({ length: 20 }, (_, seed) => seed);
const dryDay = (kind: FermentKind, seed: number) =>
  simulatedFerment(kind, seed).find(({ gravity }) => gravity <= 0.996)?.day ?? Infinity;
const end = (kind: FermentKind, seed: number) => simulatedFerment(kind, seed).at(-1)?.sugar ?? 0;

test('the same seed is the same wine, another seed another', () => {
  expect(simulatedFerment('sound', 7)).toEqual(simulatedFerment('sound', 7));
  expect(simulatedFerment('sound', 7)).not.toEqual(simulatedFerment('sound', 8));
});

test.each(['sound', 'slow', 'cold', 'stuck'] as const)('a %s one starts as told and never rises', (kind) => {
  const gravities = simulatedFerment(kind, 3, 1.09).map(({ gravity }) => gravity);
  expect(gravities[0]).toBeCloseTo(1.09, 4);
  expect(gravities).toEqual(gravities.toSorted((a, b) => b - a));
});

describe.each(SEEDS)('seed %d', (seed) => {
  test('sound: dry within four to fourteen days, nothing left', () => {
    expect(dryDay('sound', seed)).toBeGreaterThan(4);
    expect(dryDay('sound', seed)).toBeLessThan(14);
    expect(end('sound', seed)).toBeLessThan(1);
  });

  test('slow and cold: later than sound', () => {
    expect(dryDay('slow', seed)).toBeGreaterThan(dryDay('sound', seed) + 3);
    expect(dryDay('cold', seed)).toBeGreaterThan(dryDay('sound', seed));
  });

  test('stuck: sugar left for good', () => expect(end('stuck', seed)).toBeGreaterThan(8));
});
