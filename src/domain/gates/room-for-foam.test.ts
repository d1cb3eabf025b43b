import { describe, expect, test } from 'vitest';
import { codesOf } from '../../../tests/story/told';
import type { Litres } from '../unit';
import { foamRoomWanted, roomForFoam } from './room-for-foam';

const asked = (vessel: number | undefined, wine: number) =>
  codesOf(roomForFoam(vessel as Litres | undefined, wine as Litres));

describe('room for foam', () => {
  test.each<[what: string, vessel: number | undefined, wine: number, verdict: 'open' | string[]]>([
    ['a vessel that nobody measured is not held up', undefined, 22, 'open'],
    ['a twentieth of the wine is enough', 23.1, 22, 'open'],
    ['less is not', 23, 22, ['no-room-for-foam']],
    ['more wine than vessel is none at all', 20, 22, ['no-room-for-foam']],
  ])('%s', (_, vessel, wine, verdict) => expect(asked(vessel, wine)).toEqual(verdict));

  test('what is drawn off to make room is enough, whatever floating point makes of it', () => {
    const tight = Array.from({ length: 2000 }, (_, index) => 10 + index / 97).filter((vessel) => {
      const left = vessel - foamRoomWanted(vessel as Litres);
      return asked(vessel, left) !== 'open';
    });
    expect(tight).toEqual([]);
  });
});
