import { describe, expect, test } from 'vitest';
import { Maker } from '../../tests/story/maker';
import { HOUR } from '../domain/calendar';
import type { Rung } from './facts';
import { builtInSheets } from './kits';
import { ladder } from './ladder';

/** A wine that stopped at 1.020. */
const stuck = () =>
  new Maker(builtInSheets[0]!, { gravityOn: (day) => Math.max(1.02, 1.067 - day * 0.01), celsius: 21 })
    .goTo('ferment')
    .wait(12 * 24);

const help = (maker: Maker, rung: Rung) => maker.report({ type: 'helped', how: 'touch', rung });
const now = ({ facts }: Maker) => ladder(facts).now;

describe('help for a stuck ferment', () => {
  test('begins with the gentlest', () => expect(now(stuck())).toEqual({ code: 'take', rung: 'read again' }));

  test('that is only reading again is followed at once by the next', () => {
    const maker = stuck();
    help(maker, 'read again');
    expect(now(maker)).toEqual({ code: 'take', rung: 'warmed' });
  });

  test('that needs its time is looked at after 72 hours, and the next waits for a reading from then', () => {
    const maker = stuck();
    help(maker, 'read again');
    help(maker, 'warmed');
    const wait = { code: 'look again', rung: 'warmed', after: maker.now.at + 72 * HOUR };
    expect(now(maker)).toEqual(wait);
    maker.wait(71).read();
    expect(now(maker)).toEqual(wait);
    maker.wait(1).read();
    expect(now(maker)).toEqual({ code: 'take', rung: 'roused' });
  });

  test('comes to an end, and says so', () => {
    const maker = stuck();
    for (const rung of ['read again', 'warmed', 'roused', 'fresh starter'] as const) {
      help(maker, rung);
      maker.wait(72).read();
    }
    const { tried, now: then } = ladder(maker.facts);
    expect([tried.map(({ rung }) => rung), then.code]).toEqual([
      ['read again', 'warmed', 'roused', 'fresh starter'],
      'all tried',
    ]);
  });
});
