import { describe, expect, test } from 'vitest';
import type { NumberKind, NumberRange } from './number-wording';
import { spokenNumber } from './spoken-number';

const gravity: NumberRange = { lowest: 0.985, highest: 1.13 };
const start: NumberRange = { lowest: 1.04, highest: 1.13 };
const celsius: NumberRange = { lowest: 0, highest: 40 };
const fahrenheit: NumberRange = { lowest: 32, highest: 104 };
const few: NumberRange = { lowest: 0, highest: 60 };

describe('a number that was heard', () => {
  test.each<[NumberKind, NumberRange, string, number]>([
    ['gravity', gravity, 'one point oh five four', 1.054],
    ['gravity', gravity, 'one point zero five four', 1.054],
    ['gravity', gravity, 'one oh five four', 1.054],
    ['gravity', gravity, 'one point oh fifty four', 1.054],
    ['gravity', gravity, 'ten fifty-four', 1.054],
    ['gravity', gravity, 'ten oh four', 1.004],
    ['gravity', gravity, 'ten ten', 1.01],
    ['gravity', gravity, 'eleven oh two', 1.102],
    ['gravity', gravity, 'eleven hundred', 1.1],
    ['gravity', gravity, 'one thousand', 1],
    ['gravity', gravity, 'a thousand', 1],
    ['gravity', gravity, 'one thousand and four', 1.004],
    ['gravity', gravity, 'one point oh oh oh', 1],
    ['gravity', gravity, 'one point one oh two', 1.102],
    ['gravity', gravity, 'nine nine six', 0.996],
    ['gravity', gravity, 'nine ninety six', 0.996],
    ['gravity', gravity, 'nine hundred and ninety six', 0.996],
    ['gravity', gravity, 'zero point nine nine four', 0.994],
    ['gravity', gravity, 'naught point nine nine four', 0.994],
    ['gravity', gravity, 'point nine nine four', 0.994],
    ['gravity', gravity, 'Point  Nine ninety', 0.99],
    ['gravity', start, 'fifty-four', 1.054],
    ['gravity', start, 'ninety', 1.09],
    ['gravity', start, 'one oh two', 1.102],
    ['temperature', celsius, 'twenty-one and a half', 21.5],
    ['temperature', celsius, 'twenty one point five', 21.5],
    ['temperature', celsius, 'nineteen degrees', 19],
    ['temperature', celsius, 'zero', 0],
    ['temperature', fahrenheit, 'sixty eight', 68],
    ['temperature', fahrenheit, 'one hundred and two point four degrees', 102.4],
    ['count', few, 'thirty', 30],
    ['count', { lowest: 1, highest: 150 }, 'one hundred and twenty', 120],
    ['minutes', few, 'five minutes', 5],
    ['minutes', few, 'one minute', 1],
    ['minutes', few, 'two and a half minutes', 2.5],
    ['minutes', few, 'half a minute', 0.5],
    ['litres', few, 'twenty two and a half', 22.5],
    ['litres', few, 'four point six', 4.6],
    ['litres', few, 'four point six oh', 4.6],
    ['litres', few, 'twenty two point seven five liters', 22.75],
    ['litres', few, 'half a liter', 0.5],
    ['litres', few, 'three and three quarters', 3.75],
    ['gallons', few, 'five gallons', 5],
  ])('as a %s within %o: %s', (kind, range, words, number) =>
    expect(spokenNumber(kind, words, range)).toBe(number),
  );

  test.each<[string, NumberKind, string, NumberRange]>([
    ['words that are no number', 'gravity', 'that is done', gravity],
    ['silence', 'count', '', few],
    ['a number with words left over', 'count', 'twelve bottles', few],
    ['a number cut short', 'gravity', 'one point oh five', gravity],
    ['two places alone where a finished wine is possible', 'gravity', 'fifty four', gravity],
    ['a gravity above its range', 'gravity', 'one point oh five four', { lowest: 0.985, highest: 1.04 }],
    ['a gravity below its range', 'gravity', 'nine nine six', start],
    ['a temperature out of range', 'temperature', 'sixty eight', celsius],
    ['a half where things are counted', 'count', 'six and a half', few],
    ['another unit than the one asked', 'litres', 'five gallons', few],
  ])('is not made of %s', (_, kind, words, range) =>
    expect(spokenNumber(kind, words, range)).toBeUndefined(),
  );
});
