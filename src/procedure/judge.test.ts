import { describe, expect, test } from 'vitest';
import { added, askedOf, AT_REST, DRY, known, PASSED, rested, RESTED_AT } from '../../tests/story/known';
import { hedge, sheetOf } from '../../tests/story/refused';
import { answersTold, momentAt, r, readingTold } from '../../tests/story/told';
import type { Celsius, Litres } from '../domain/unit';
import type { Verdict } from '../domain/verdict';
import type { Check } from './check';
import type { Facts } from './facts';
import { judge } from './judge';
import type { KitSheet } from './kit-sheet';

type Said = ReturnType<typeof askedOf>;

/** The first clause, whole. */
const because = (verdict: Verdict): object | undefined => (verdict.open ? undefined : verdict.because);

const ember = sheetOf('ember-quay');

describe('a stabiliser', () => {
  test.each<[story: string, given: Facts, said: Said]>([
    ['after the gate', known(), 'open'],
    ['not before it', known({ passed: {} }), ['dryness-not-proven']],
    ['after the one before it', known({ additions: [added('sulphite', 2, 'sulphite')] }), 'open'],
    [
      'not after anything else',
      known({ additions: [added('sweetening', 2, 'sweetening pack')] }),
      ['added-since'],
    ],
    ['after what went in with the pass', known({ additions: [added('bentonite', 1, 'bentonite')] }), 'open'],
    ['after what went in before it', known({ additions: [added('bentonite', -100, 'bentonite')] }), 'open'],
  ])('%s', (_, given, codes) => expect(askedOf('may stabilise', given)).toEqual(codes));

  test('what was added is named as it is printed, or as it is known', () => {
    const names = ['sweetening', 'honey'].map((sachet) =>
      because(judge('may stabilise', hedge, known({ additions: [added(sachet, 2, 'oak')] }))),
    );
    expect(names).toEqual([
      { code: 'added-since', sachet: 'Fruit sweetening pack' },
      { code: 'added-since', sachet: 'honey' },
    ]);
  });
});

describe('a sweetening pack', () => {
  const sorbate = added('sorbate', 2, 'sorbate');
  const sulphite = added('sulphite', 2, 'sulphite');
  test.each<[story: string, given: Facts, said: Said]>([
    ['behind every sorbate', known({ additions: [sulphite, sorbate] }), 'open'],
    ['not before the gate', known({ passed: {}, additions: [sulphite, sorbate] }), ['dryness-not-proven']],
    ['not without the sorbate', known({ additions: [sulphite] }), ['stabilisers-not-all-in']],
    [
      'not into a wine that is falling',
      known({ additions: [sulphite, sorbate] }, [r(-48, 9955), r(0, 9940)]),
      ['still-falling'],
    ],
  ])('%s', (_, given, codes) => expect(askedOf('may sweeten', given)).toEqual(codes));
  test('names the sorbate that is missing, and nothing else', () =>
    expect(because(judge('may sweeten', hedge, known()))).toEqual({
      code: 'stabilisers-not-all-in',
      missing: ['Potassium sorbate, stabiliser'],
    }));
});

describe('the rest before bottling', () => {
  const struckAt = (hours: number): Partial<Facts> => ({ struckAt: { 2: momentAt(hours).at } });
  const withStruck = (hours: number): Facts =>
    rested(struckAt(hours), [r(-48, 9940), r(0, 9940, { struck: true }), ...AT_REST.slice(2)]);
  test.each<[story: string, given: Facts, said: Said]>([
    ['still', rested(), 'open'],
    ['no baseline', rested({ baseline: 9 }), ['no-baseline']],
    ['nothing read yet', { ...rested(), baseline: undefined as never }, ['no-baseline']],
    ['in doubt since a strike after the baseline', withStruck(11), ['dryness-in-doubt']],
    ['in doubt since a strike at the baseline', withStruck(10), ['dryness-in-doubt']],
    ['no longer in doubt where the strike came before', withStruck(9), 'open'],
  ])('%s', (_, given, codes) => expect(askedOf('proving still', given)).toEqual(codes));

  test('is not in doubt where the reading that was struck was not needed', () => {
    const readings = [r(-48, 9940), r(-24, 9940, { struck: true }), ...AT_REST.slice(2)];
    const needed = [{ ...readingTold(r(0, 9940), 5), entry: 6 }];
    const given = rested(struckAt(11), readings);
    const enough = { ...given, readings: [...given.readings, ...needed] };
    expect(askedOf('proving still', enough)).toBe('open');
  });

  test('is not in doubt where what is left was read up to the moment of the gate', () => {
    const readings = [r(-48, 9940), r(-24, 9940, { struck: true }), ...AT_REST.slice(2), r(1, 9940)];
    const given = rested({ struckAt: { 2: momentAt(11).at } }, readings);
    const passed = { ...given.passed, 'proving dry': { ...PASSED, readings: [1, 2, 5] } };
    expect(askedOf('proving still', { ...given, passed })).toBe('open');
  });

  test('is not in doubt where no gate of dryness was ever passed', () =>
    expect(askedOf('proving still', rested({ passed: {} }))).toBe('open'));

  test('bottling waits for the gate, and is held to what it asked', () => {
    expect([
      askedOf('may bottle', rested()),
      askedOf('may bottle', rested({ passed: { 'proving dry': PASSED } })),
      askedOf('may bottle', rested({ judgements: answersTold('gas', [false, true], RESTED_AT) })),
    ]).toEqual(['open', ['wine-not-proven-still'], ['gassy']]);
  });
});

describe('lesser questions', () => {
  const rush = (...answers: boolean[]): Partial<Facts> => ({
    judgements: [...answersTold('rush', answers), ...answersTold('gas', [true], 90)],
  });
  const taken = (celsius: number): Partial<Facts> => ({
    temperatures: [{ ...momentAt(0), entry: 3, celsius: celsius as Celsius }],
  });
  test.each<[question: Check, story: string, given: Facts, said: Said, sheet?: KitSheet]>([
    ['surface calm', 'not knocked', known(), ['surface-rushes']],
    ['surface calm', 'no rush', known(rush(false)), 'open'],
    ['surface calm', 'a rush', known(rush(true)), ['surface-rushes']],
    ['surface calm', 'a rush after none', known(rush(false, true)), ['surface-rushes']],
    ['surface calm', 'none after a rush', known(rush(true, false)), 'open'],
    ['warm enough to fine', 'not measured', known(), ['wine-not-measured']],
    ['warm enough to fine', 'at the sheet’s', known(taken(18)), 'open'],
    ['warm enough to fine', 'below it', known(taken(17.9)), ['fining-too-cold']],
    ['low enough to move', 'not read', known({}, []), 'open', ember],
    ['low enough to move', 'at the sheet’s', known({}, [r(0, 10100)]), 'open', ember],
    ['low enough to move', 'above it', known({}, [r(0, 10101)]), ['not-low-enough-to-move'], ember],
    ['low enough to move', 'where the sheet moves nothing early', known({}, [r(0, 10800)]), 'open'],
  ])('%s: %s', (question, _, given, codes, sheet) => expect(askedOf(question, given, sheet)).toEqual(codes));

  test('what was seen before the sediment was stirred up says nothing, and what was seen then and later does', () => {
    const looks = (from: number): Facts =>
      known(
        {
          judgements: [0, 24].map((hours) => answersTold('clear', [true], from + hours)[0]!),
          done: { 'leave to clear 1': momentAt(-600) },
          mishaps: [{ ...momentAt(0), entry: 20, mishap: 'sediment stirred up', place: 'clear' }],
        },
        DRY,
        30,
      );
    expect([-1, 0].map((from) => askedOf('proving clear', looks(from)))).toEqual([['not-looked-at'], 'open']);
  });

  test('water that is held back leaves the must thicker, and fewer litres of it', () => {
    const must = (gravity: number): Facts => ({
      ...known({ brim: 25 as Litres, stirredSeconds: { 'stir must 1': 240 } }, [r(-400, gravity)]),
    });
    expect([10_670, 10_730, 10_830].map((gravity) => askedOf('proving mixed', must(gravity)))).toEqual([
      ['start-outside'],
      'open',
      ['start-outside'],
    ]);
  });
});
