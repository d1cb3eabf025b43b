import { describe, expect, test } from 'vitest';
import { added, askedOf, known, PASSED, rested, RESTED_AT } from '../../tests/story/known';
import { momentAt, r, type Told } from '../../tests/story/told';
import { RULES } from '../domain/gates/passing';
import type { Facts } from './facts';

type Said = ReturnType<typeof askedOf>;

describe('a gate passed under earlier rules stands', () => {
  const before = { ...PASSED, rules: RULES - 1 };
  const falling: Told[] = [r(-48, 9955), r(0, 9940)];
  const old = (rest: Partial<Facts> = {}, readings = falling): Facts =>
    known({ passed: { 'proving dry': before }, ...rest }, readings);
  const dose = [added('sulphite', 2, 'sulphite'), added('sorbate', 2, 'sorbate')];
  const mishap = (hours: number): Partial<Facts> => ({
    mishaps: [{ ...momentAt(hours), entry: 20, mishap: 'sediment stirred up', place: 'rack' }],
  });
  test.each<[story: string, given: Facts, said: Said]>([
    ['for the stabiliser', old(), 'open'],
    ['not where it was passed under today’s', old({ passed: { 'proving dry': PASSED } }), ['still-falling']],
    ['not once a reading of it is struck', old({ struckAt: { 2: momentAt(2).at } }), ['still-falling']],
    ['whatever else is struck', old({ struckAt: { 9: momentAt(2).at } }), 'open'],
    ['with a reading of the same moment', old({}, [...falling.slice(0, 1), r(1, 9940)]), 'open'],
    ['not after another reading', old({}, [...falling, r(2, 9940)]), ['still-falling']],
    ['with a mishap before it', old(mishap(0)), 'open'],
    ['not after a mishap', old(mishap(2)), ['still-falling']],
  ])('%s', (_, given, codes) => expect(askedOf('may stabilise', given)).toEqual(codes));

  test('for the sweetening pack', () =>
    expect([
      askedOf('may sweeten', old({ additions: dose })),
      askedOf('may sweeten', old({ additions: dose, passed: { 'proving dry': PASSED } })),
    ]).toEqual(['open', ['still-falling']]));

  test('for the bottles', () => {
    const still = { ...momentAt(RESTED_AT + 2), rules: RULES - 1, readings: [3, 4] };
    const passed = { 'proving dry': PASSED, 'proving still': still };
    expect(askedOf('may bottle', rested({ passed, judgements: [] }))).toBe('open');
  });
});
