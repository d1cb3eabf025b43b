import type { NumberKind } from '../../../src/voice/number-wording';

/** A number as it is said, what it means, and where it is asked. */
export type SaidNumber = { asked: Asked; words: string; value: number };

/** Where a number is asked: the range that is plausible there. */
export type Asked = 'start gravity' | 'gravity' | 'celsius' | 'fahrenheit' | 'count' | 'minutes' | 'litres';

export const RANGES: Record<Asked, { kind: NumberKind; lowest: number; highest: number }> = {
  'start gravity': { kind: 'gravity', lowest: 1.04, highest: 1.13 },
  gravity: { kind: 'gravity', lowest: 0.985, highest: 1.13 },
  celsius: { kind: 'temperature', lowest: 10, highest: 40 },
  fahrenheit: { kind: 'temperature', lowest: 50, highest: 104 },
  count: { kind: 'count', lowest: 1, highest: 60 },
  minutes: { kind: 'minutes', lowest: 1, highest: 60 },
  litres: { kind: 'litres', lowest: 0.5, highest: 30 },
};

const said =
  (asked: Asked) =>
  ([words, value]: readonly [string, number]): SaidNumber => ({ asked, words, value });

const START: readonly (readonly [string, number])[] = [
  ['fifty-four', 1.054],
  ['ninety', 1.09],
  ['eighty-seven', 1.087],
  ['one point oh seven eight', 1.078],
  ['one point one oh two', 1.102],
  ['ten sixty-two', 1.062],
  ['eleven hundred', 1.1],
  ['ten ninety-five', 1.095],
  ['one oh eight four', 1.084],
  ['one point zero seven five', 1.075],
];

const ON_THE_WAY: readonly (readonly [string, number])[] = [
  ['one point oh five four', 1.054],
  ['one point zero five four', 1.054],
  ['ten fifty-four', 1.054],
  ['one oh five four', 1.054],
  ['one point oh one oh', 1.01],
  ['one point oh oh two', 1.002],
  ['one point zero zero eight', 1.008],
  ['one thousand', 1],
  ['one point oh oh oh', 1],
  ['ten ten', 1.01],
  ['ten sixteen', 1.016],
  ['ten twenty-three', 1.023],
  ['ten oh four', 1.004],
  ['ten thirty', 1.03],
  ['nine nine six', 0.996],
  ['nine ninety-six', 0.996],
  ['nine nine zero', 0.99],
  ['nine ninety', 0.99],
  ['nine ninety-two', 0.992],
  ['zero point nine nine four', 0.994],
  ['oh point nine nine eight', 0.998],
  ['point nine nine four', 0.994],
  ['point nine nine five', 0.995],
  ['nine eighty-eight', 0.988],
];

const CELSIUS: readonly (readonly [string, number])[] = [
  ['twenty-one and a half', 21.5],
  ['twenty-one point five', 21.5],
  ['eighteen', 18],
  ['nineteen degrees', 19],
  ['twenty', 20],
  ['twenty-four point two', 24.2],
  ['sixteen and a half degrees', 16.5],
  ['twenty-three', 23],
  ['seventeen point eight', 17.8],
  ['thirty', 30],
];

const FAHRENHEIT: readonly (readonly [string, number])[] = [
  ['sixty-eight', 68],
  ['seventy-two degrees', 72],
  ['seventy', 70],
  ['sixty-five and a half', 65.5],
  ['fifty-nine', 59],
];

const COUNT: readonly (readonly [string, number])[] = [
  ['thirty', 30],
  ['twenty-nine', 29],
  ['twelve', 12],
  ['fifteen', 15],
  ['six', 6],
  ['thirty-one', 31],
];

const MINUTES: readonly (readonly [string, number])[] = [
  ['five minutes', 5],
  ['ten minutes', 10],
  ['fifteen', 15],
  ['twenty-five minutes', 25],
  ['two and a half minutes', 2.5],
  ['forty', 40],
];

const LITRES: readonly (readonly [string, number])[] = [
  ['twenty-two and a half', 22.5],
  ['four point six', 4.6],
  ['twenty-three litres', 23],
  ['four and a half litres', 4.5],
  ['twenty-two point seven five', 22.75],
  ['five', 5],
  ['nineteen point eight litres', 19.8],
  ['half a litre', 0.5],
];

export const SAID_NUMBERS: readonly SaidNumber[] = [
  ...START.map(said('start gravity')),
  ...ON_THE_WAY.map(said('gravity')),
  ...CELSIUS.map(said('celsius')),
  ...FAHRENHEIT.map(said('fahrenheit')),
  ...COUNT.map(said('count')),
  ...MINUTES.map(said('minutes')),
  ...LITRES.map(said('litres')),
];
