/** What kinds of number are asked by ear. */
export type NumberKind = 'gravity' | 'temperature' | 'count' | 'minutes' | 'litres' | 'gallons';

/** What is plausible where a number is asked, both ends included, in the unit that it is asked in. */
export type NumberRange = { lowest: number; highest: number };

/** Words that can stand in one place, and what each adds to the number. No words at all: the place may stay empty. */
export type Place = readonly (readonly [words: string, adds: number])[];

/** Ways of saying a kind of number: each is a row of places whose whole numbers add up to the number times `scale`. */
export type Wording = { scale: number; ways: readonly (readonly Place[])[] };

const NAMES =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );
const TENS = 'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');

/** 0 to 99 as counted: "forty two". */
const counted = (number: number): string =>
  NAMES[number] ??
  [TENS[Math.floor(number / 10) - 2], ...(number % 10 ? [NAMES[number % 10]] : [])].join(' ');

const from = (first: number, last: number, times = 1): Place =>
  Array.from({ length: last - first + 1 }, (_, nth) => [counted(first + nth), (first + nth) * times]);

/** A figure said by itself, where 0 is "oh" or "zero". */
const figure = (times: number): Place => [['oh', 0], ...from(0, 9, times)];
const fixed = (words: string, adds: number): Place => [[words, adds]];
const optional = (...words: readonly string[]): Place => ['', ...words].map((word) => [word, 0]);

/** The last two figures of a gravity as one number: "fifty four", "ten", "oh four". */
const lastTwo: Place = [
  ...from(10, 99),
  ...from(1, 9).map(([words, adds]) => [`oh ${words}`, adds] as const),
];

const NOUGHT: Place = ['', 'zero', 'oh', 'naught'].map((word) => [word, 0]);
const HUNDREDS: Place = [
  ['oh', 0],
  ['zero', 0],
  ['one', 100],
];

const GRAVITY: Wording['ways'] = [
  // One point oh five four; one oh five four.
  [fixed('one', 1000), optional('point'), HUNDREDS, figure(10), figure(1)],
  // One point oh fifty four.
  [fixed('one point', 1000), HUNDREDS, from(10, 99)],
  // Ten fifty four; eleven oh two; eleven hundred; one thousand; one thousand and four.
  [from(10, 11, 100), lastTwo],
  [fixed('eleven hundred', 1100)],
  [
    [
      ['one thousand', 1000],
      ['a thousand', 1000],
    ],
  ],
  [fixed('one thousand and', 1000), from(1, 99)],
  // Nine nine six; point nine nine six; zero point nine ninety six; nine hundred and ninety six.
  [fixed('nine', 900), figure(10), figure(1)],
  [NOUGHT, fixed('point nine', 900), figure(10), figure(1)],
  [fixed('nine', 900), from(10, 99)],
  [NOUGHT, fixed('point nine', 900), from(10, 99)],
  [fixed('nine hundred', 900), optional('and'), from(10, 99)],
];

/** Where only a must's start can be meant, its last figures are enough: fifty four; one oh two. */
const START_GRAVITY: Wording['ways'] = [
  [fixed('', 1000), from(10, 99)],
  [fixed('one', 1100), figure(10), figure(1)],
];

/** Whole numbers up to 199, each worth `times`. */
const whole = (times: number): readonly (readonly Place[])[] => [
  [from(0, 99, times)],
  [
    [
      ['a hundred', 100 * times],
      ['one hundred', 100 * times],
    ],
  ],
  [fixed('a hundred and', 100 * times), from(1, 99, times)],
  [fixed('one hundred and', 100 * times), from(1, 99, times)],
];

const half = (times: number): Place => [
  ['', 0],
  ['and a half', times / 2],
];

const TEMPERATURE: Wording['ways'] = whole(10).flatMap((row) => [
  [...row, half(10), optional('degrees')],
  [...row, fixed('point', 0), figure(1), optional('degrees')],
]);

const MINUTES: Wording['ways'] = [
  [...(whole(10)[0] ?? []), half(10), optional('minutes', 'minute')],
  [fixed('half a minute', 5)],
];

const QUARTERS: Place = [
  ['and a quarter', 25],
  ['and a half', 50],
  ['and three quarters', 75],
];

const volume = (one: string, many: string): Wording['ways'] => [
  [from(0, 99, 100), [['', 0], ...QUARTERS], optional(many, one)],
  [from(0, 99, 100), fixed('point', 0), figure(10), [['', 0], ...figure(1)], optional(many)],
  [fixed(`half a ${one}`, 50)],
];

/** The ways that a kind of number is said where it must lie in a range. */
export function wordingOf(kind: NumberKind, { lowest }: NumberRange): Wording {
  switch (kind) {
    case 'gravity':
      return { scale: 1000, ways: lowest >= 1 ? [...GRAVITY, ...START_GRAVITY] : GRAVITY };
    case 'temperature':
      return { scale: 10, ways: TEMPERATURE };
    case 'count':
      return { scale: 1, ways: whole(1) };
    case 'minutes':
      return { scale: 10, ways: MINUTES };
    case 'litres':
      return { scale: 100, ways: volume('liter', 'liters') };
    case 'gallons':
      return { scale: 100, ways: volume('gallon', 'gallons') };
  }
}
