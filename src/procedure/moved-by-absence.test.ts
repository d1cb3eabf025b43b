import { describe, expect, test } from 'vitest';
import { Maker } from '../../tests/story/maker';
import { onDay } from '../domain/calendar';
import { asOf } from './facts';
import { builtInSheets } from './kits';
import { movedByAbsence } from './moved-by-absence';

/** Day 1 of the ferment: the next act is the reading of day 5. */
function fermenting(): Maker {
  const maker = new Maker(builtInSheets[0]!).goTo('ferment');
  while (maker.act?.step !== 'read on the way') maker.answer();
  return maker;
}

describe('the next act, while the maker is away', () => {
  const moved = (fromDay: number, untilDay: number) => {
    const { facts, place, sheet, now } = fermenting();
    const day = (count: number) => onDay(facts.pitched!, count, 0);
    return movedByAbsence(place, sheet, asOf(facts, now), { from: day(fromDay), until: day(untilDay) });
  };

  test('waits for the free hour of the day of return', () =>
    expect(moved(4, 8)).toBe(onDay(fermenting().facts.pitched!, 8, 18)));

  test('stays where it is when it falls due before or after', () =>
    expect([moved(1, 4), moved(6, 9)]).toEqual([undefined, undefined]));

  test('is none at a gate', () => {
    const { facts, place, sheet } = new Maker(builtInSheets[0]!).goTo('proving dry');
    expect(movedByAbsence(place, sheet, facts, { from: facts.now.at, until: facts.now.at })).toBeUndefined();
  });
});
