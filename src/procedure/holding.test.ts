import { expect, test } from 'vitest';
import { Maker } from '../../tests/story/maker';
import { near } from '../../tests/reference/near';
import { builtInSheets } from './kits';
import { holding } from './holding';

const sheet = builtInSheets.find(({ id }) => id === 'hedge-lantern')!;
const at = (place: Parameters<Maker['goTo']>[0]) => holding(sheet, new Maker(sheet).goTo(place).facts);

test('nothing is held before the must is measured', () => expect(at('mix')).toBeUndefined());

test('the must weighs what its gravity says, and fills thirty bottles with what the lees keep left out', () =>
  expect(at('pitch')).toEqual({
    litres: 23,
    reserve: 0,
    kilograms: near(23 * 1.067 * 0.9982, 2),
    bottles: 30,
    closures: 32,
    leftLitres: near(0.2, 9),
  }));

test('the reserve is out of the vessel, and counted for the bottles', () => {
  const { litres, reserve, bottles } = at('fine')!;
  expect({ reserve, all: litres + reserve > 21, bottles }).toEqual({
    reserve: 2,
    all: true,
    bottles: Math.floor((litres + reserve - 0.3) / 0.75),
  });
});

test('the reserve comes home', () => expect(at('clear')?.reserve).toBe(0));
