import { describe, expect, test } from 'vitest';
import type { Maker } from '../../tests/story/maker';
import { at, hedge, how, later, REASON, said, sheetOf } from '../../tests/story/refused';
import type { Instant } from '../domain/unit';
import type { KitSheet } from '../procedure/kit-sheet';
import type { Place } from '../procedure/phase';
import type { BatchEvent, Report } from './batch-event';
import { refusal } from './refusal';

const noted: Report = { type: 'noted', how, text: 'well' };
const begunBy = (maker: Maker, milliseconds: number) => (maker.facts.begun.at + milliseconds) as Instant;

describe('when something is told', () => {
  const maker = at('ferment');
  test.each<[story: string, rest: Partial<BatchEvent>, said: string]>([
    ['now', {}, 'taken'],
    ['a millisecond before the last', { at: (maker.facts.now.at - 1) as Instant }, 'earlier-than-the-last'],
    ['at the very moment of the last', { at: maker.facts.now.at }, 'taken'],
    ['of a millisecond ago', { takenAt: later(maker, -1) }, 'taken'],
    ['of a millisecond from now', { takenAt: later(maker, 1) }, 'in-the-future'],
    ['of the moment the batch began', { takenAt: begunBy(maker, 0) }, 'taken'],
    ['of a millisecond before the batch', { takenAt: begunBy(maker, -1) }, 'before-the-batch'],
  ])('%s: %s', (_, rest, code) => expect(said(maker, noted, rest)).toBe(code));

  test('nothing once the batch has ended', () => expect(said(at('finished'), noted)).toBe('batch-has-ended'));

  test('the same event of another batch is asked about anew', () => {
    const event = { ...noted, ...maker.now } as BatchEvent;
    const ended = at('finished');
    const asked = [maker, ended, maker].map(({ sheet, place, facts }) =>
      refusal({ sheet, place, facts }, event),
    );
    expect(asked).toEqual([undefined, { code: 'batch-has-ended' }, undefined]);
  });
});

test('the same event at another place, or of another sheet, is asked about anew', () => {
  const { facts, now, sheet, act } = at('clean');
  const event = { type: 'act done', how, act: act!.id, ...now } as BatchEvent;
  const asked = (place: Place, of: KitSheet) => refusal({ sheet: of, place, facts }, event)?.code ?? 'taken';
  expect([asked('clean', sheet), asked('sanitise', sheet), asked('clean', sheet)]).toEqual([
    'taken',
    'not-this-act',
    'taken',
  ]);
  const left = { type: 'left out', how, sachet: 'oak', reason: REASON, ...now } as BatchEvent;
  const oak = (of: KitSheet) => refusal({ sheet: of, place: 'clean', facts }, left)?.code ?? 'taken';
  expect([oak(hedge), oak(sheetOf('ember-quay'))]).toEqual(['cannot-be-left-out', 'taken']);
});
