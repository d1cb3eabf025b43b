import { expect, test } from 'vitest';
import { onScale, parseTemperature } from './temperature';
import type { Celsius } from './unit';

test.each([
  ['21', '°C', 21],
  ['21,5', '°C', 21.5],
  ['0', '°C', 0],
  ['40', '°C', 40],
  ['68', '°F', 20],
  ['104', '°F', 40],
] as const)('%s %s is understood', (given, scale, celsius) =>
  expect(parseTemperature(given, scale)).toEqual({ ok: true, value: celsius }),
);

test.each([
  ['70', '°C'],
  ['-1', '°C'],
  ['31', '°F'],
  ['warm', '°C'],
] as const)('%s %s is refused, never clamped', (given, scale) =>
  expect(parseTemperature(given, scale)).toEqual({
    ok: false,
    problem: { code: 'temperature-misread', given, scale, lowest: 0, highest: 40 },
  }),
);

test('is shown on the scale that it was asked on', () =>
  expect([onScale(20 as Celsius, '°F'), onScale(20 as Celsius, '°C')]).toEqual([68, 20]));
