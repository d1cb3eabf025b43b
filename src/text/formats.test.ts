import { describe, expect, test } from 'vitest';
import type { Gravity } from '../domain/gravity';
import { FIRST_PREFERENCES, type Preferences } from '../domain/preferences';
import type { Celsius, Instant, Litres } from '../domain/unit';
import { formatsFor, type Formats } from './formats';

const SATURDAY = Date.UTC(2031, 11, 6, 17, 4) as Instant;

const formats = (chosen: Partial<Preferences> = {}, language = 'en', timeZone = 'Europe/Paris'): Formats =>
  formatsFor({ preferences: { ...FIRST_PREFERENCES, ...chosen }, language, timeZone });

const english = formats();
const german = formats({}, 'de');
const american = formats({ volume: 'US gallons', temperature: '°F' }, 'en-US', 'America/Chicago');

test.each([
  [9940, '0.994', '0,994'],
  [9945, '0.9945', '0,9945'],
  [10_000, '1.000', '1,000'],
  [10_620, '1.062', '1,062'],
  [15, '0.0015', '0,0015'],
])('gravity %i is %s, and %s where the comma is decimal', (value, point, comma) =>
  expect([english.gravity(value as Gravity), german.gravity(value as Gravity)]).toEqual([point, comma]),
);

test.each([
  [9940, 'zero point nine nine four'],
  [10_540, 'one point zero five four'],
  [9945, 'zero point nine nine four five'],
])('gravity %i is read back as "%s"', (value, spoken) =>
  expect(english.spokenGravity(value as Gravity)).toBe(spoken),
);

test.each([
  [21, '21 °C', '69.8 °F', '21 °C'],
  [20.55, '20.6 °C', '69 °F', '20,6 °C'],
  [0, '0 °C', '32 °F', '0 °C'],
])('%d degrees', (value, celsius, fahrenheit, comma) =>
  expect([english, american, german].map((each) => each.celsius(value as Celsius))).toEqual([
    celsius,
    fahrenheit,
    comma,
  ]),
);

test('a temperature is spoken with its scale', () =>
  expect([english, american].map((each) => each.spokenCelsius(21.5 as Celsius))).toEqual([
    '21.5 degrees Celsius',
    '70.7 degrees Fahrenheit',
  ]));

/** A US gallon is 3.785411784 L, an imperial one 4.54609 L. */
test.each([
  [23, '23 litres', '6.1 US gallons', '5.1 imperial gallons'],
  [1, '1 litre', '0.26 US gallons', '0.22 imperial gallons'],
  [22.5, '22.5 litres', '5.9 US gallons', '4.9 imperial gallons'],
  [3.785411784, '3.8 litres', '1 US gallon', '0.83 imperial gallons'],
  [4.54609, '4.5 litres', '1.2 US gallons', '1 imperial gallon'],
  [0.25, '0.25 litres', '0.07 US gallons', '0.05 imperial gallons'],
])('%d litres by the full name of each unit', (value, ...expected) =>
  expect(
    (['litres', 'US gallons', 'imperial gallons'] as const).map((volume) =>
      formats({ volume }).litres(value as Litres),
    ),
  ).toEqual(expected),
);

test.each([
  [0, '0 seconds'],
  [1, '1 second'],
  [45, '45 seconds'],
  [60, '1 minute'],
  [90, '1 minute and 30 seconds'],
  [240, '4 minutes'],
  [3600, '1 hour'],
  [3900, '1 hour and 5 minutes'],
  [86_400, '1 day'],
  [183_600, '2 days and 3 hours'],
  [-5, '0 seconds'],
])('%i seconds is "%s"', (seconds, said) => expect(english.duration(seconds)).toBe(said));

test('other quantities carry their units', () =>
  expect([
    english.hours(48),
    english.hours(1),
    english.hours(47.9),
    english.days(1),
    english.dayNumber(12),
    english.grams(2),
    english.grams(4.25),
    english.bar(0.67),
    english.count(1234),
  ]).toEqual([
    '48 hours',
    '1 hour',
    '47.9 hours',
    '1 day',
    'day 12',
    '2 grams',
    '4.3 grams',
    '0.7 bar',
    '1,234',
  ]));

describe('a moment', () => {
  test('is written out on the clock of the maker', () =>
    expect([english.date(SATURDAY), english.dateTime(SATURDAY), english.dayAndTime(SATURDAY)]).toEqual([
      '6 December 2031',
      '6 December 2031 at 18:04',
      'Saturday 6 December, about 18:04',
    ]));

  test('is an hour of another clock elsewhere', () =>
    expect(american.dayAndTime(SATURDAY).replace(/\s/g, ' ')).toBe('Saturday, December 6, about 11:04 AM'));

  test('is in the words of another language', () => expect(german.date(SATURDAY)).toBe('6. Dezember 2031'));
});

test('a list is joined as the language does', () =>
  expect([english.list(['a']), english.list(['a', 'b', 'c']), german.list(['a', 'b'])]).toEqual([
    'a',
    'a, b and c',
    'a und b',
  ]));
