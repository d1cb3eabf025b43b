import { describe, expect, test } from 'vitest';
import { at, how, later, refused, said } from '../../tests/story/refused';
import type { Instant } from '../domain/unit';
import type { Place } from '../procedure/phase';
import type { Report } from './batch-event';

describe('an answer', () => {
  const done = (act: string): Report => ({ type: 'act done', how, act });
  test.each<[story: string, place: Place, report: Report, said: string]>([
    ['to the act that waits', 'clean', done('wash gear 1'), 'taken'],
    ['to one that was done', 'clean', done('choose a place 1'), 'already-done'],
    ['to one that comes later', 'clean', done('rinse gear 1'), 'not-this-act'],
    ['where no act waits', 'proving dry', done('wash gear 2'), 'not-this-act'],
    [
      'of another kind than is asked',
      'clean',
      { type: 'clock started', how, act: 'wash gear 1' },
      'not-this-act',
    ],
    ['"done" to a count', 'prepare', done('lay out sachets 1'), 'not-this-act'],
  ])('%s, at %s', (_, place, report, code) => expect(said(at(place), report)).toBe(code));

  test('about something else than is asked by eye or hand', () => {
    const maker = at('ferment');
    const judged = (what: 'foam' | 'gas'): Report => ({
      type: 'judged',
      how,
      what,
      yes: true,
      act: maker.act!.id,
    });
    expect([said(maker, judged('foam')), said(maker, judged('gas'))]).toEqual(['taken', 'not-this-act']);
  });

  test('to an act whose check is shut: its reason', () => {
    const maker = at('stabilise');
    while (!maker.act?.sealed) maker.answer();
    const act = done(maker.act.id);
    expect([said(maker, act), said(maker, act, { at: later(maker, 80 * 3_600_000) })]).toEqual([
      'taken',
      'dryness-stale',
    ]);
  });
});

describe('a clock', () => {
  const clock = (type: 'clock started' | 'clock paused' | 'clock resumed', act: string): Report => ({
    type,
    how,
    act,
  });
  const contact = () => {
    const maker = at('sanitise');
    maker.answer();
    return maker;
  };
  test('is started before it is paused, extended or over', () => {
    const maker = contact();
    const act = maker.act!.id;
    const extended: Report = { type: 'clock extended', how, act, seconds: 60 };
    const done: Report = { type: 'act done', how, act };
    expect(
      [clock('clock paused', act), clock('clock resumed', act), extended, done].map((each) =>
        said(maker, each),
      ),
    ).toEqual(Array.from({ length: 4 }, () => 'clock-not-running'));
    expect(said(maker, clock('clock started', act))).toBe('taken');
  });

  test('is started once, and resumed only where it is paused', () => {
    const maker = contact();
    const act = maker.act!.id;
    maker.report(clock('clock started', act));
    expect([said(maker, clock('clock started', act)), said(maker, clock('clock resumed', act))]).toEqual([
      'clock-already-running',
      'clock-already-running',
    ]);
    maker.report(clock('clock paused', act));
    expect([said(maker, clock('clock paused', act)), said(maker, clock('clock resumed', act))]).toEqual([
      'clock-not-running',
      'taken',
    ]);
    expect(said(maker, { type: 'clock extended', how, act, seconds: 60 })).toBe('taken');
  });

  test('of a wait runs to its end, and of a stir may be cut short', () => {
    const wait = contact();
    const act = wait.act!.id;
    wait.report(clock('clock started', act));
    const done: Report = { type: 'act done', how, act };
    const seen = [599.999, 600].map((seconds) => said(wait, done, { at: later(wait, seconds * 1000) }));
    expect(seen).toEqual(['clock-not-over', 'taken']);
    const stir = at('mix');
    while (stir.act?.kind !== 'stir') stir.answer();
    expect(said(stir, { type: 'act done', how, act: stir.act.id })).toBe('clock-not-running');
    stir.report(clock('clock started', stir.act.id));
    expect(said(stir, { type: 'act done', how, act: stir.act.id })).toBe('taken');
  });

  test('of corked bottles standing is the calendar', () => {
    const maker = at('stand');
    const act = maker.act!;
    const until = act.kind === 'wait' ? act.until : maker.now.at;
    const done: Report = { type: 'act done', how, act: act.id };
    const whole = (more: number) => refused(maker, done, { at: (until + more) as Instant });
    expect([whole(-1), whole(0)]).toEqual([{ code: 'clock-not-over', seconds: 1 }, undefined]);
  });
});
