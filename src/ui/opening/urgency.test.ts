import { expect, test } from 'vitest';
import { HOUR } from '../../domain/calendar';
import type { Instant } from '../../domain/unit';
import { byUrgency, urgencyOf } from './urgency';

const NOON = Date.UTC(2031, 4, 3, 12) as Instant;
const at = (hours: number) => (NOON + hours * HOUR) as Instant;
const act = (offset?: number) => ({
  next: {
    act: 'read towards dry 1',
    step: 'read towards dry' as const,
    ...(offset === undefined ? {} : { due: at(offset) }),
  },
});
const gate = (offset: number) => ({ next: { gate: 'proving dry' as const, due: at(offset) } });
const ended = (offset: number) => ({ endedAt: at(offset) });

test.each([
  ['an act whose time has passed by an hour', act(-1), 'late'],
  ['an act whose hour it is', act(-0.9), 'now'],
  ['an act without a time', act(), 'now'],
  ['an act yet to come', act(1), 'later'],
  ['a gate that can open by now', gate(-1), 'now'],
  ['a gate that cannot open yet', gate(1), 'later'],
  ['a batch that is over', ended(-5), 'ended'],
] as const)('%s: %s → %s', (_, batch, urgency) => expect(urgencyOf(batch, NOON)).toBe(urgency));

test('another look that is due comes before what is for later, and after what is late', () => {
  const looked = { ...act(30), look: at(-2) };
  const inOrder = [act(-20), looked, act(20), { ...act(30), look: at(25) }, act(28)];
  expect([3, 1, 4, 0, 2].map((index) => inOrder[index]!).toSorted(byUrgency(NOON))).toEqual(inOrder);
});

test('batches stand in the order in which they need someone', () => {
  const inOrder = [act(-20), act(-10), act(), act(30), gate(40), ended(-1), ended(-9)];
  expect([3, 6, 1, 4, 0, 5, 2].map((index) => inOrder[index]!).toSorted(byUrgency(NOON))).toEqual(inOrder);
});
