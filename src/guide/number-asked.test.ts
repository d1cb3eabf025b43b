import { describe, expect, test } from 'vitest';
import { formatsFor } from '../text/formats';
import { numberAsked } from './number-asked';
import type { Situation } from './situation';
import { spokenNumber } from '../voice/spoken-number';

/** Outside any act. */
const HERE = {} as Situation;

const { units: metric } = formatsFor({
  preferences: { volume: 'litres', temperature: '°C' },
  language: 'en',
  timeZone: 'UTC',
});
const fahrenheit = { ...metric, temperature: '°F' } as const;

describe('a temperature that is asked by ear', () => {
  test.each([
    ['degrees Celsius', metric, 10, 40],
    ['degrees Fahrenheit', fahrenheit, 50, 104],
  ])('lies where a wine is kept, in %s', (_, units, lowest, highest) => {
    for (const field of ['sampleCelsius', 'wineCelsius', 'waterCelsius', 'celsius'] as const)
      expect(numberAsked(field, HERE, units)).toMatchObject({ kind: 'temperature', lowest, highest });
  });

  test.each(['two', 'three', 'five', 'six', 'nine'])(
    'is never “%s”, the half of a number that was caught',
    (half) => {
      const { kind, ...range } = numberAsked('sampleCelsius', HERE, metric);
      expect(spokenNumber(kind, half, range)).toBeUndefined();
      expect(spokenNumber(kind, 'twenty', range)).toBe(20);
    },
  );

  test('can be colder when it is typed', () =>
    expect(numberAsked('sampleCelsius', HERE, metric).parse('4')).toEqual({ ok: true, value: 4 }));
});
