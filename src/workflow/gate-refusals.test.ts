import { describe, expect, test } from 'vitest';
import type { Maker } from '../../tests/story/maker';
import { at, how, REASON, said } from '../../tests/story/refused';
import { RULES } from '../domain/gates/passing';
import type { Gravity } from '../domain/gravity';
import type { Place } from '../procedure/phase';
import type { Report } from './batch-event';
import { remediesFor } from './remedies';

describe('at a gate', () => {
  const passed = (gate: 'proving dry' | 'proving clear', rules = RULES): Report => ({
    type: 'gate passed',
    how,
    gate,
    rules,
    readings: [],
  });
  const tooSoon = () => {
    const maker = at('ferment');
    maker.answer();
    for (const days of [7, 2, 1]) maker.wait(24 * days).read({ reading: 9940 as Gravity });
    return maker;
  };
  test.each<[story: string, maker: () => Maker, report: Report, said: string]>([
    ['passed when it is open', () => at('proving dry'), passed('proving dry'), 'taken'],
    ['not another than it stands at', () => at('proving dry'), passed('proving clear'), 'not-this-act'],
    [
      'not under rules that are yet to come',
      () => at('proving dry'),
      passed('proving dry', RULES + 1),
      'not-this-act',
    ],
    [
      'passed under earlier rules, whatever today’s say',
      () => at('proving clear'),
      passed('proving clear', RULES - 1),
      'taken',
    ],
    ['not while a clause fails', () => at('proving clear'), passed('proving clear'), 'clearing-too-short'],
    ['a day too soon', tooSoon, passed('proving dry'), 'too-soon'],
  ])('%s', (_, maker, report, code) => expect(said(maker(), report)).toBe(code));

  const tooHigh = () => {
    const maker = at('proving dry').wait(24);
    maker.read({ reading: 9990 as Gravity });
    return maker;
  };
  const override: Extract<Report, { type: 'overridden' }> = {
    type: 'overridden',
    how,
    question: 'proving dry',
    clause: 'too-soon',
    reason: REASON,
  };
  test.each<[story: string, maker: () => Maker, change: Partial<typeof override>, said: string]>([
    ['a clause that yields, for a reason', tooSoon, {}, 'taken'],
    ['not by voice', tooSoon, { how: 'voice' }, 'not-by-voice'],
    ['not for a letter', tooSoon, { reason: 'x' }, 'reason-too-short'],
    ['not for dots', tooSoon, { reason: '........' }, 'reason-too-short'],
    ['not one that does not fail', () => at('proving dry'), {}, 'does-not-yield'],
    ['not one that fails and yields to nothing', tooHigh, { clause: 'not-dry' }, 'does-not-yield'],
    [
      'not one that yields to nothing',
      () => at('proving dry').wait(1),
      { clause: 'not-dry' },
      'does-not-yield',
    ],
    ['for eight letters', tooSoon, { reason: 'eight ok!' }, 'reason-too-short'],
    ['for eight letters and no fewer', tooSoon, { reason: 'eight oks' }, 'taken'],
  ])('overridden: %s', (_, maker, change, code) =>
    expect(said(maker(), { ...override, ...change })).toBe(code),
  );

  test('a way back is taken for a clause that fails there, and for no other', () => {
    const maker = at('proving gas-free');
    const back = (gate: 'proving gas-free' | 'proving still', clause: string): Report => ({
      type: 'sent back',
      how,
      gate,
      clause,
    });
    expect(said(maker, back('proving gas-free', 'gassy'))).toBe('no-such-way-back');
    maker.judge('gas', true);
    expect(
      [
        back('proving gas-free', 'gassy'),
        back('proving gas-free', 'gas-not-tested'),
        back('proving still', 'no-baseline'),
      ].map((each) => said(maker, each)),
    ).toEqual(['taken', 'no-such-way-back', 'no-such-way-back']);
  });

  test.each<[place: Place, what: 'gas' | 'clear' | 'foam', said: string]>([
    ['proving gas-free', 'gas', 'taken'],
    ['proving gas-free', 'clear', 'not-this-act'],
    ['proving clear', 'clear', 'taken'],
    ['proving clear', 'gas', 'not-this-act'],
    ['proving still', 'gas', 'taken'],
    ['proving still', 'clear', 'taken'],
    ['proving still', 'foam', 'not-this-act'],
    ['proving dry', 'gas', 'not-this-act'],
    ['clear', 'gas', 'not-this-act'],
  ])('at %s, without an act, %s is judged: %s', (place, what, code) =>
    expect(said(at(place), { type: 'judged', how, what, yes: true })).toBe(code),
  );

  test('the ways back for what fails at one gate are that gate’s own', () =>
    expect(remediesFor('proving gas-free', [{ code: 'gassy', failures: 1 }])).toEqual([
      { gate: 'proving gas-free', clause: 'gassy', to: 'degas' },
    ]));
});
