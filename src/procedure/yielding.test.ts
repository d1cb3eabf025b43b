import { describe, expect, test } from 'vitest';
import { askedOf, known } from '../../tests/story/known';
import { answersTold, momentAt, r } from '../../tests/story/told';
import type { Check } from './check';
import type { Facts } from './facts';
import type { Gate } from './phase';
import { YIELDS } from './yielding';

type Said = ReturnType<typeof askedOf>;

describe('dryness', () => {
  const override = (question: Gate | Check, clause: string, hours = 0) => ({
    ...momentAt(hours),
    question,
    clause,
    reason: 'my own decision',
  });
  const early = (rest: Partial<Facts>): Facts => known({ pitched: momentAt(-72), ...rest });
  test.each<[story: string, given: Facts, said: Said]>([
    ['proven', known(), 'open'],
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
    ['above the limit', known({}, [r(-48, 9970), r(0, 9970)]), ['not-dry']],
    [
      'above the limit, and not a sugar in it',
      known({ sugarTests: [{ ...momentAt(1), gramsPerLitre: 2 }] }, [r(-48, 9970), r(0, 9970)]),
      'open',
    ],
    [
      'above the limit, with a little sugar',
      known({ sugarTests: [{ ...momentAt(1), gramsPerLitre: 2.1 }] }, [r(-48, 9970), r(0, 9970)]),
      ['not-dry'],
    ],
    [
      'above the limit, whatever the reason',
      known({ overrides: [override('proving dry', 'not-dry')] }, [r(-48, 9970), r(0, 9970)]),
      ['not-dry'],
    ],
  ])('%s', (_, given, codes) => expect(askedOf('proving dry', given)).toEqual(codes));

  test('too soon, with a reason: the stabiliser need not ask again', () => {
    const overrides = [override('proving dry', 'too-soon')];
    expect([early({}), early({ overrides })].map((given) => askedOf('may stabilise', given))).toEqual([
      ['too-soon'],
      'open',
    ]);
  });

  test('a reason given before the last gate sent the wine back is used up, one given then or later is not', () => {
    const back = { ...momentAt(0), gate: 'proving still' as const, clause: 'gassy' as const };
    const given = [-1, 0, 1].map((hours) =>
      early({ returns: [back], overrides: [override('proving dry', 'too-soon', hours)] }),
    );
    expect(given.map((each) => askedOf('proving dry', each))).toEqual([['too-soon'], 'open', 'open']);
  });

  test('a reason given before its own gate sent the wine back is used up; another gate’s way back leaves it', () => {
    const gas = answersTold('gas', [true], 0);
    const returned = (gate: Gate) =>
      known({
        judgements: gas,
        returns: [{ ...momentAt(1), gate, clause: 'gassy' }],
        overrides: [override('proving gas-free', 'gassy'), override('proving gas-free', 'gas-not-tested')],
      });
    expect(
      (['proving gas-free', 'proving clear'] as const).map((gate) =>
        askedOf('proving gas-free', returned(gate)),
      ),
    ).toEqual([['gassy', 'gas-not-tested'], 'open']);
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
