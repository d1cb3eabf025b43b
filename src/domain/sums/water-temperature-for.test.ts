import { describe, expect, test } from 'vitest';
import { near } from '../../../tests/reference/near';
import { mixingTemperature } from './mixing-temperature';
import { waterTemperatureFor } from './water-temperature-for';

const concentrate = { litres: 8, celsius: 18, gravity: 1.26 };
const asked = (waterLitres: number, target: number, celsius = 18) =>
  waterTemperatureFor({ parts: [{ ...concentrate, celsius }], waterLitres, target });

describe('the last water', () => {
  test('lands the batch where it was wanted', () => {
    const water = asked(15, 22);
    expect(water.code).toBe('pour');
    expect(mixingTemperature([concentrate, { litres: 15, celsius: water.celsius }])).toBeCloseTo(22, 9);
  });

  test('would scald if little of it had to warm a lot', () =>
    expect(asked(2, 26)).toEqual({ code: 'scalding', celsius: near(54.1, 0), limit: 49 }));

  test.each([
    ['hotter than boiling', asked(0.5, 30), 198],
    ['colder than ice', asked(2, 18, 35), -44],
  ])('cannot be %s', (_, water, celsius) =>
    expect(water).toEqual({
      code: 'impossible',
      celsius: near(celsius, -1),
      lowest: 0,
      highest: 100,
    }),
  );

  test('may be all there is', () =>
    expect(waterTemperatureFor({ parts: [], waterLitres: 5, target: 22 })).toEqual({
      code: 'pour',
      celsius: 22,
    }));
});

test.each([
  [0, 22],
  [101, 22],
  [15, 4],
  [15, 41],
])('%d litres for %d °C is refused', (waterLitres, target) =>
  expect(() => asked(waterLitres, target)).toThrow(RangeError),
);
