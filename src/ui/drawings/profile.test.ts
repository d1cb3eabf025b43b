import { describe, expect, test } from 'vitest';
import { BUCKET, CARBOY, halfWidthAt, levelIn, outline, type Profile } from './profile';

const CYLINDER: Profile = [
  [0, 10],
  [100, 10],
];
const CONE: Profile = [
  [0, 0],
  [100, 50],
];

describe('the level of a share of the volume', () => {
  test.each([
    ['an empty cylinder', CYLINDER, 0, 0],
    ['half a cylinder', CYLINDER, 0.5, 50],
    ['a full cylinder', CYLINDER, 1, 100],
    ['more than full stays at the brim', CYLINDER, 1.2, 100],
    ['an eighth of a cone standing on its tip is half its height', CONE, 0.125, 50],
    ['a full bucket', BUCKET, 1, 236],
    ['a full carboy, to the top of its neck', CARBOY, 1, 246],
  ])('%s', (_, profile, share, level) => expect(levelIn(profile, share)).toBeCloseTo(level, 6));

  test('a wider top takes half the volume above half the height', () =>
    expect(levelIn(BUCKET, 0.5)).toBeGreaterThan(118));
});

describe('the wall of a cone', () => {
  test.each([
    [0, 0],
    [50, 25],
    [100, 50],
  ])('at height %d stands %d from the middle', (height, half) =>
    expect(halfWidthAt(CONE, height)).toBeCloseTo(half, 10),
  );

  test('ends at its rim', () => expect(halfWidthAt(CONE, 120)).toBe(50));
});

test('an outline goes down one side and up the other', () =>
  expect(outline(CYLINDER, 50, 120)).toBe('M40.0 20.0L40.0 120.0L60.0 120.0L60.0 20.0'));
