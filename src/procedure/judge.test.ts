import { describe, expect, test } from 'vitest';
import { answersTold, codesOf, momentAt, r, readingTold, type Told } from '../../tests/story/told';
import { RULES } from '../domain/gates/passing';
import type { Verdict } from '../domain/verdict';
import type { Celsius, Litres } from '../domain/unit';
import type { Check } from './check';
import type { Contents } from './contents';
import { nothingYet, type Addition, type Facts } from './facts';
import { judge } from './judge';
import { builtInSheets } from './kits';
import type { KitSheet } from './kit-sheet';
import type { Gate } from './phase';
import { YIELDS } from './yielding';

const sheetOf = (id: string): KitSheet => builtInSheets.find((sheet) => sheet.id === id) ?? builtInSheets[0]!;
const hedge = sheetOf('hedge-lantern');
const ember = sheetOf('ember-quay');

type Said = ReturnType<typeof codesOf>;

const PITCHED = momentAt(-13 * 24);
const DRY: Told[] = [r(-48, 9940), r(0, 9940)];
const PASSED = { ...momentAt(1), rules: RULES, readings: [1, 2] };

/** A batch that is dry and has passed the dryness gate an hour ago, but for what is told otherwise. */
const facts = (rest: Partial<Facts> = {}, told: Told[] = DRY, now = 2): Facts => ({
  ...nothingYet(PITCHED, 18),
  now: momentAt(now),
  entries: 40,
  pitched: PITCHED,
  readings: told.map(readingTold),
  passed: { 'proving dry': PASSED },
  ...rest,
});

const added = (sachet: string, hours: number, ...contents: Contents[]): Addition => ({
  ...momentAt(hours),
  entry: 30,
  sachet,
  contents,
  phase: 'stabilise',
});

const said = (question: Gate | Check, given: Facts, sheet = hedge): Said => codesOf(judge(question, sheet, given));

/** The first clause, whole. */
const because = (verdict: Verdict): object | undefined => (verdict.open ? undefined : verdict.because);

describe('dryness', () => {
  const override = (question: Gate | Check, clause: string, hours = 0) => ({
    ...momentAt(hours),
    question,
    clause,
    reason: 'my own decision',
  });
  const early = (rest: Partial<Facts>): Facts => facts({ pitched: momentAt(-72), ...rest });
  test.each<[story: string, given: Facts, said: Said]>([
    ['proven', facts(), 'open'],
    ['too soon', early({}), ['too-soon']],
    ['too soon, with a reason', early({ overrides: [override('proving dry', 'too-soon')] }), 'open'],
    [
      'too soon, with a reason for something else',
      early({ overrides: [override('proving dry', 'not-dry')] }),
      ['too-soon'],
    ],
    [
      'too soon, with a reason given elsewhere',
      early({ overrides: [override('proving clear', 'too-soon')] }),
      ['too-soon'],
    ],
    ['above the limit', facts({}, [r(-48, 9970), r(0, 9970)]), ['not-dry']],
    [
      'above the limit, and not a sugar in it',
      facts({ sugarTests: [{ ...momentAt(1), gramsPerLitre: 2 }] }, [r(-48, 9970), r(0, 9970)]),
      'open',
    ],
    [
      'above the limit, with a little sugar',
      facts({ sugarTests: [{ ...momentAt(1), gramsPerLitre: 2.1 }] }, [r(-48, 9970), r(0, 9970)]),
      ['not-dry'],
    ],
    [
      'above the limit, whatever the reason',
      facts({ overrides: [override('proving dry', 'not-dry')] }, [r(-48, 9970), r(0, 9970)]),
      ['not-dry'],
    ],
  ])('%s', (_, given, codes) => expect(said('proving dry', given)).toEqual(codes));

  test('a reason given before the last gate sent the wine back is used up, one given then or later is not', () => {
    const back = { ...momentAt(0), gate: 'proving still' as const, clause: 'gassy' as const };
    const given = [-1, 0, 1].map((hours) =>
      early({ returns: [back], overrides: [override('proving dry', 'too-soon', hours)] }),
    );
    expect(given.map((each) => said('proving dry', each))).toEqual([['too-soon'], 'open', 'open']);
  });

  test('a reason given before its own gate sent the wine back is used up; another gate’s way back leaves it', () => {
    const gas = answersTold('gas', [true], 0);
    const returned = (gate: Gate) =>
      facts({
        judgements: gas,
        returns: [{ ...momentAt(1), gate, clause: 'gassy' }],
        overrides: [override('proving gas-free', 'gassy'), override('proving gas-free', 'gas-not-tested')],
      });
    expect((['proving gas-free', 'proving clear'] as const).map((gate) => said('proving gas-free', returned(gate)))).toEqual([
      ['gassy', 'gas-not-tested'],
      'open',
    ]);
  });
});

test('these clauses yield to a reason, and no others', () =>
  expect(YIELDS).toEqual({
    'proving dry': ['too-soon'],
    'proving gas-free': ['gassy', 'gas-not-tested'],
    'proving clear': ['clearing-too-short', 'cloudy', 'not-looked-at'],
    'warm enough to fine': ['fining-too-cold'],
    'topped up': ['gap-too-wide'],
  }));

describe('a stabiliser', () => {
  test.each<[story: string, given: Facts, said: Said]>([
    ['after the gate', facts(), 'open'],
    ['not before it', facts({ passed: {} }), ['dryness-not-proven']],
    ['after the one before it', facts({ additions: [added('sulphite', 2, 'sulphite')] }), 'open'],
    ['not after anything else', facts({ additions: [added('sweetening', 2, 'sweetening pack')] }), ['added-since']],
    ['after what went in with the pass', facts({ additions: [added('bentonite', 1, 'bentonite')] }), 'open'],
    ['after what went in before it', facts({ additions: [added('bentonite', -100, 'bentonite')] }), 'open'],
  ])('%s', (_, given, codes) => expect(said('may stabilise', given)).toEqual(codes));

  test('what was added is named as it is printed, or as it is known', () => {
    const names = ['sweetening', 'honey'].map((sachet) =>
      because(judge('may stabilise', hedge, facts({ additions: [added(sachet, 2, 'oak')] }))),
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
    ['behind every sorbate', facts({ additions: [sulphite, sorbate] }), 'open'],
    ['not before the gate', facts({ passed: {}, additions: [sulphite, sorbate] }), ['dryness-not-proven']],
    ['not without the sorbate', facts({ additions: [sulphite] }), ['stabilisers-not-all-in']],
    ['not into a wine that is falling', facts({ additions: [sulphite, sorbate] }, [r(-48, 9955), r(0, 9940)]), ['still-falling']],
  ])('%s', (_, given, codes) => expect(said('may sweeten', given)).toEqual(codes));
  test('names the sorbate that is missing, and nothing else', () =>
    expect(because(judge('may sweeten', hedge, facts()))).toEqual({
      code: 'stabilisers-not-all-in',
      missing: ['Potassium sorbate, stabiliser'],
    }));
});

describe('the rest before bottling', () => {
  const week = 7 * 24;
  const told: Told[] = [...DRY, r(10, 9940), r(10 + week, 9940)];
  const rested = (rest: Partial<Facts> = {}, readings = told): Facts =>
    facts(
      {
        baseline: 3,
        judgements: answersTold('gas', [false, false], 10 + week),
        passed: { 'proving dry': PASSED, 'proving still': { ...momentAt(12 + week), rules: RULES, readings: [3, 4] } },
        ...rest,
      },
      readings,
      13 + week,
    );
  const struckAt = (hours: number): Partial<Facts> => ({ struckAt: { 2: momentAt(hours).at } });
  const withStruck = (hours: number): Facts =>
    rested(struckAt(hours), [r(-48, 9940), r(0, 9940, { struck: true }), ...told.slice(2)]);
  test.each<[story: string, given: Facts, said: Said]>([
    ['still', rested(), 'open'],
    ['no baseline', rested({ baseline: 9 }), ['no-baseline']],
    ['nothing read yet', { ...rested(), baseline: undefined as never }, ['no-baseline']],
    ['in doubt since a strike after the baseline', withStruck(11), ['dryness-in-doubt']],
    ['in doubt since a strike at the baseline', withStruck(10), ['dryness-in-doubt']],
    ['no longer in doubt where the strike came before', withStruck(9), 'open'],
  ])('%s', (_, given, codes) => expect(said('proving still', given)).toEqual(codes));

  test('is not in doubt where the reading that was struck was not needed', () => {
    const readings = [r(-48, 9940), r(-24, 9940, { struck: true }), ...told.slice(2)];
    const needed = [{ ...readingTold(r(0, 9940), 5), entry: 6 }];
    const given = rested(struckAt(11), readings);
    const enough = { ...given, readings: [...given.readings, ...needed] };
    expect(said('proving still', enough)).toBe('open');
  });

  test('bottling waits for the gate, and is held to what it asked', () => {
    expect([
      said('may bottle', rested()),
      said('may bottle', rested({ passed: { 'proving dry': PASSED } })),
      said('may bottle', rested({ judgements: answersTold('gas', [false, true], 10 + week) })),
    ]).toEqual(['open', ['wine-not-proven-still'], ['gassy']]);
  });

  describe('a gate passed under earlier rules stands', () => {
    const before = { ...PASSED, rules: RULES - 1 };
    const falling: Told[] = [r(-48, 9955), r(0, 9940)];
    const old = (rest: Partial<Facts> = {}, readings = falling): Facts =>
      facts({ passed: { 'proving dry': before }, ...rest }, readings);
    const dose = [added('sulphite', 2, 'sulphite'), added('sorbate', 2, 'sorbate')];
    const mishap = (hours: number): Partial<Facts> => ({
      mishaps: [{ ...momentAt(hours), entry: 20, mishap: 'sediment stirred up' as never, place: 'rack' }],
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
    ])('%s', (_, given, codes) => expect(said('may stabilise', given)).toEqual(codes));

    test('for the sweetening pack', () =>
      expect([said('may sweeten', old({ additions: dose })), said('may sweeten', old({ additions: dose, passed: { 'proving dry': PASSED } }))]).toEqual([
        'open',
        ['still-falling'],
      ]));

    test('for the bottles', () => {
      const still = { ...momentAt(12 + week), rules: RULES - 1, readings: [3, 4] };
      const passed = { 'proving dry': PASSED, 'proving still': still };
      expect(said('may bottle', rested({ passed, judgements: [] }))).toBe('open');
    });
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
    ['surface calm', 'not knocked', facts(), ['surface-rushes']],
    ['surface calm', 'no rush', facts(rush(false)), 'open'],
    ['surface calm', 'a rush', facts(rush(true)), ['surface-rushes']],
    ['surface calm', 'a rush after none', facts(rush(false, true)), ['surface-rushes']],
    ['surface calm', 'none after a rush', facts(rush(true, false)), 'open'],
    ['warm enough to fine', 'not measured', facts(), ['wine-not-measured']],
    ['warm enough to fine', 'at the sheet’s', facts(taken(18)), 'open'],
    ['warm enough to fine', 'below it', facts(taken(17.9)), ['fining-too-cold']],
    ['low enough to move', 'not read', facts({}, []), 'open', ember],
    ['low enough to move', 'at the sheet’s', facts({}, [r(0, 10100)]), 'open', ember],
    ['low enough to move', 'above it', facts({}, [r(0, 10101)]), ['not-low-enough-to-move'], ember],
    ['low enough to move', 'where the sheet moves nothing early', facts({}, [r(0, 10800)]), 'open'],
  ])('%s: %s', (question, _, given, codes, sheet) => expect(said(question, given, sheet)).toEqual(codes));

  test('what was seen before the sediment was stirred up says nothing, and what was seen then and later does', () => {
    const looks = (from: number): Facts =>
      facts(
        {
          judgements: [0, 24].map((hours) => answersTold('clear', [true], from + hours)[0]!),
          done: { 'leave to clear 1': momentAt(-600) },
          mishaps: [{ ...momentAt(0), entry: 20, mishap: 'sediment stirred up' as never, place: 'clear' }],
        },
        DRY,
        30,
      );
    expect([-1, 0].map((from) => said('proving clear', looks(from)))).toEqual([['not-looked-at'], 'open']);
  });

  test('water that is held back leaves the must thicker, and fewer litres of it', () => {
    const must = (gravity: number): Facts => ({
      ...facts({ brim: 25 as Litres, stirredSeconds: { 'stir must 1': 240 } }, [r(-400, gravity)]),
    });
    expect([10_670, 10_730, 10_830].map((gravity) => said('proving mixed', must(gravity)))).toEqual([
      ['start-outside'],
      'open',
      ['start-outside'],
    ]);
  });
});
