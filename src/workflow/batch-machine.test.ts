import { describe, expect, test } from 'vitest';
import { at, how, REASON } from '../../tests/story/refused';
import type { Report } from './batch-event';

type Ended = Extract<Report, { type: 'ended' }>;

describe('the machine goes where an event leads, and nowhere when it is refused', () => {
  const ends: Ended['end'][] = ['kept unbottled', 'discarded', 'left the guide'];
  test.each(ends)('%s', (end) => {
    const maker = at('clear');
    maker.report({ type: 'ended', how, end, reason: REASON });
    expect(maker.place).toBe(end);
  });

  test.each<[why: string, change: Partial<Ended>]>([
    ['by voice', { how: 'voice' }],
    ['for a letter', { reason: 'x' }],
  ])('no end %s', (_, change) => {
    const maker = at('clear');
    const event = { type: 'ended', how, end: 'discarded', reason: REASON, ...change } as const;
    expect(maker.snapshot.can({ ...event, ...maker.now })).toBe(false);
  });

  test('no way back for a clause that does not fail', () => {
    const maker = at('proving gas-free');
    const back = { type: 'sent back', how, gate: 'proving gas-free', clause: 'gassy' } as const;
    expect(maker.snapshot.can({ ...back, ...maker.now })).toBe(false);
    maker.judge('gas', true);
    expect(maker.snapshot.can({ ...back, ...maker.now })).toBe(true);
  });
});
