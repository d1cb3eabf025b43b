import { expect, test } from 'vitest';
import { blend } from './blend';

const wine = { litres: 22, gravity: 0.996, alcohol: 12, sugar: 3, sulphurDioxide: 40, sorbicAcid: 190 };
const pack = { litres: 1, gravity: 1.3, sugar: 800 };
const water = { litres: 1, gravity: 1 };
const rounded = (blended: object) =>
  Object.fromEntries(
    Object.entries(blended).map(([name, value]) => [name, Number(Number(value).toFixed(3))]),
  );

test('a sweetening pack sweetens the wine and thins everything else', () =>
  expect(rounded(blend([wine, pack]))).toEqual({
    litres: 23,
    gravity: 1.009,
    alcohol: 11.478,
    sugar: 37.652,
    sulphurDioxide: 38.261,
    sorbicAcid: 181.739,
  }));

test('one part is itself', () => expect(blend([wine])).toEqual(wine));

test('water thins', () => expect(blend([wine, water]).alcohol).toBeCloseTo((22 / 23) * 12, 9));

test.each([
  ['nothing', []],
  ['an empty jug', [{ litres: 0, gravity: 1 }]],
  ['less than nothing', [{ litres: -1, gravity: 1 }]],
  ['a liquid lighter than any wine', [{ litres: 1, gravity: 0.9 }]],
  ['spirits', [{ litres: 1, gravity: 0.98, alcohol: 40 }]],
])('%s is refused', (_, parts) => expect(() => blend(parts)).toThrow(RangeError));
