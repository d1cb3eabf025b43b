import { describe, expect, test } from 'vitest';
import { Maker } from '../../tests/story/maker';
import type { Celsius, Instant } from '../domain/unit';
import { builtInSheets } from '../procedure/kits';
import { mayYield } from './may-yield';

const atGasGate = () => new Maker(builtInSheets[0]!).goTo('proving gas-free');

/** Sent back for gas, stirred, and tested lively again. */
function stirredAgain(maker: Maker): void {
  maker.judge('gas', true);
  maker.report({ type: 'sent back', how: 'touch', gate: 'proving gas-free', clause: 'gassy' });
  for (let act = maker.wait(0.1).act; act; act = maker.wait(0.1).act) {
    if (act.kind === 'temperature')
      maker.report({ type: 'temperature taken', how: 'touch', act: act.id, celsius: 21 as Celsius });
    else maker.answer();
  }
}

describe('what a clause gives way to', () => {
  test.each([
    ['proving dry', 'too-soon', 'to a reason'],
    ['proving dry', 'not-dry', 'never'],
    ['proving clear', 'cloudy', 'to a reason'],
    ['proving still', 'still-moving', 'never'],
    ['proving still', 'gassy', 'never'],
    ['may stabilise', 'too-soon', 'never'],
    ['topped up', 'gap-too-wide', 'to a reason'],
  ] as const)('%s, %s: %s', (question, clause, gives) =>
    expect(mayYield(question, clause, atGasGate().facts)).toBe(gives),
  );

  test('gas gives way only after the rounds, the warmth and one more test', () => {
    const maker = atGasGate();
    const gives = () => mayYield('proving gas-free', 'gassy', maker.facts);
    const seen = [gives()];
    for (let round = 0; round < 3; round += 1) {
      stirredAgain(maker);
      seen.push(gives());
    }
    maker.judge('gas', true);
    expect([...seen, gives()]).toEqual(['later', 'later', 'later', 'later', 'to a reason']);
  });

  const back = { at: 0 as Instant, offsetMinutes: 0, gate: 'proving gas-free', clause: 'gassy' } as const;
  const warmed = (celsius: number, at: number) => ({
    at: at as Instant,
    offsetMinutes: 0,
    entry: 1,
    celsius: celsius as Celsius,
  });
  const tested = (what: 'gas' | 'rush', at: number) => ({
    at: at as Instant,
    offsetMinutes: 0,
    entry: 2,
    what,
    yes: true,
  });
  test.each([
    ['after three ways back, warmed, and tested', 3, warmed(20, 5), tested('gas', 6), 'to a reason'],
    ['tested as it was warmed', 3, warmed(20, 5), tested('gas', 5), 'to a reason'],
    ['not after two', 2, warmed(20, 5), tested('gas', 6), 'later'],
    ['not a degree colder', 3, warmed(19, 5), tested('gas', 6), 'later'],
    ['not tested before that', 3, warmed(20, 5), tested('gas', 4), 'later'],
    ['not by a knock', 3, warmed(20, 5), tested('rush', 6), 'later'],
  ] as const)('gas: %s', (_, times, temperature, judgement, gives) => {
    const facts = {
      ...atGasGate().facts,
      returns: Array.from({ length: times }, () => back),
      temperatures: [temperature],
      judgements: [judgement],
    };
    expect(mayYield('proving gas-free', 'gassy', facts)).toBe(gives);
  });
});
