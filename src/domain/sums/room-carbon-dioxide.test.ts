import { expect, test } from 'vitest';
import { near } from '../../../tests/reference/near';
import { roomCarbonDioxide } from './room-carbon-dioxide';

const batch = { litres: 23, start: 1.09, finish: 0.996 };

test('a whole batch would make a small room dangerous, if none of the gas left it', () =>
  expect(roomCarbonDioxide({ ...batch, roomCubicMetres: 30 })).toEqual({
    ppm: near(40_200, -3),
    kilograms: near(2.21, 2),
    litresOfGas: near(1206, -1),
    limits: { eightHours: 5000, quarterHour: 30_000, dangerous: 40_000 },
  }));

test('a chest fills up with it altogether', () =>
  expect(roomCarbonDioxide({ ...batch, roomCubicMetres: 0.3 }).ppm).toBe(1_000_000));

test.each([
  [0, 30],
  [23, 0],
  [23, 1001],
])('%d litres in %d m³ is refused', (litres, roomCubicMetres) =>
  expect(() => roomCarbonDioxide({ ...batch, litres, roomCubicMetres })).toThrow(RangeError),
);
