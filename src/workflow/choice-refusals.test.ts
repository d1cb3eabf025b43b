import { describe, expect, test } from 'vitest';
import { at, hedge, how, later, REASON, said } from '../../tests/story/refused';
import type { Place } from '../procedure/phase';
import type { Report } from './batch-event';
import { refusal } from './refusal';

describe('a choice', () => {
  const leftOut = (sachet: string, reason = REASON, by: 'touch' | 'voice' = 'touch'): Report => ({
    type: 'left out',
    how: by,
    sachet,
    reason,
  });
  const ended = (reason: string, by: 'touch' | 'voice' = 'touch'): Report => ({
    type: 'ended',
    how: by,
    end: 'discarded',
    reason,
  });
  const sugar: Report = { type: 'sugar tested', how, gramsPerLitre: 1 };
  test.each<[story: string, place: Place, report: Report, said: string]>([
    ['a sachet left out, for a reason', 'stabilise', leftOut('sorbate'), 'taken'],
    ['not by voice', 'stabilise', leftOut('sorbate', REASON, 'voice'), 'not-by-voice'],
    ['not for a letter', 'stabilise', leftOut('sorbate', 'x'), 'reason-too-short'],
    ['not the yeast', 'mix', leftOut('yeast'), 'cannot-be-left-out'],
    ['not one that is in', 'ferment', leftOut('bentonite'), 'cannot-be-left-out'],
    ['not one that there is not', 'mix', leftOut('honey'), 'cannot-be-left-out'],
    ['the gentlest rung first', 'ferment', { type: 'helped', how, rung: 'read again' }, 'taken'],
    ['no rung before it', 'ferment', { type: 'helped', how, rung: 'warmed' }, 'not-the-next-rung'],
    ['an end, for a reason', 'ferment', ended(REASON), 'taken'],
    ['no end by voice', 'ferment', ended(REASON, 'voice'), 'not-by-voice'],
    ['no end for a letter', 'ferment', ended('x'), 'reason-too-short'],
    ['sugar tested in wine', 'ferment', sugar, 'taken'],
    ['not before the yeast', 'mix', sugar, 'no-yeast-yet'],
  ])('%s, at %s', (_, place, report, code) => expect(said(at(place), report)).toBe(code));

  test('what cannot be left out is named as it is printed, or as it was said', () => {
    const maker = at('mix');
    const named = (sachet: string) =>
      refusal(
        { sheet: hedge, place: 'mix', facts: maker.facts },
        {
          ...leftOut(sachet),
          ...maker.now,
        },
      );
    expect(['yeast', 'honey'].map(named)).toEqual([
      { code: 'cannot-be-left-out', sachet: 'Wine yeast' },
      { code: 'cannot-be-left-out', sachet: 'honey' },
    ]);
  });

  test('a sachet is left out once, and each rung climbed once', () => {
    const maker = at('ferment');
    maker.report(leftOut('sorbate'));
    maker.report({ type: 'helped', how, rung: 'read again' });
    expect(
      [
        leftOut('sorbate'),
        { type: 'helped', how, rung: 'read again' } as const,
        { type: 'helped', how, rung: 'warmed' } as const,
      ].map((each) => said(maker, each)),
    ).toEqual(['cannot-be-left-out', 'not-the-next-rung', 'taken']);
  });

  test('a time away is taken where it is safe', () => {
    const maker = at('clear');
    const away = (days: number): Report => ({
      type: 'away planned',
      how,
      from: maker.now.at,
      until: later(maker, days * 86_400_000),
    });
    expect([away(20), away(60), away(0)].map((each) => said(maker, each))).toEqual([
      'taken',
      'not-safe-to-leave',
      'not-safe-to-leave',
    ]);
  });
});
