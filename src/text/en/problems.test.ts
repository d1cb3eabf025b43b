import { describe, expect, test } from 'vitest';
import { everyProblem } from '../../../tests/story/every-problem';
import type { Problem, Unsafe } from '../../domain/problem';
import { FIRST_PREFERENCES, type Preferences } from '../../domain/preferences';
import type { Gravity } from '../../domain/gravity';
import type { Litres } from '../../domain/unit';
import { en } from '../en';
import { formatsFor } from '../formats';
import { tell } from '../text';
import { unsafe } from './unsafe-to-leave';

const CHOICES: readonly Partial<Preferences>[] = [
  { volume: 'litres', temperature: '°C' },
  { volume: 'US gallons', temperature: '°F' },
  { volume: 'imperial gallons', temperature: '°F' },
];
const formats = new Map(
  CHOICES.map((chosen) => [
    chosen,
    formatsFor({ preferences: { ...FIRST_PREFERENCES, ...chosen }, language: 'en', timeZone: 'UTC' }),
  ]),
);
const told = (problem: Problem, chosen = CHOICES[0]!): string => tell(en, problem, formats.get(chosen)!);

const UNSAFE = Object.keys(unsafe) as Unsafe[];

/** One of each, and those whose sentence depends on more than the code. */
const problems: readonly Problem[] = [
  ...Object.values(everyProblem),
  { ...everyProblem['not-dry'], gravity: 9970 as Gravity },
  { ...everyProblem['not-dry'], gravity: 10_500 as Gravity },
  { ...everyProblem['too-few-readings'], counted: 0 },
  { ...everyProblem['too-few-readings'], counted: 2, hours: 47.99 },
  { ...everyProblem['start-outside'], gravity: 10_800 as Gravity, litresOver: -2.6 as Litres },
  { ...everyProblem['sachets-missing'], missing: ['Wine yeast'] },
  { ...everyProblem['reading-jumped'], hours: 0 },
  ...UNSAFE.flatMap((why) =>
    [0, 1, 42].map((atMostDays): Problem => ({ ...everyProblem['not-safe-to-leave'], why, atMostDays })),
  ),
];

/** Sentences that break a rule, by code: none, when all is well. */
function breaking(rule: (sentence: string) => boolean): string[] {
  const broken = problems.flatMap((problem) =>
    CHOICES.map((chosen) => told(problem, chosen))
      .filter(rule)
      .map((sentence) => `${problem.code}: ${sentence}`),
  );
  return [...new Set(broken)];
}

const TO_DO =
  'Add|Ask|Bring|Check|Choose|Close|Collect|Come|Count|Draw|Export|Fill|Find|Finish|Float|Get|Give|Go|Keep|Lay|Leave|Let|Look|Make|Measure|Move|Open|Put|Read|Set|Shake|Start|Stir|Take|Use|Wait|Write';
const whatToDo = new RegExp(`(?:^|[.:;] |\\n)(?:${TO_DO})\\b`, 'i');
const UNIT =
  /^ ?(?:litres?|US gallons?|imperial gallons?|mm|°C|°F|hours?|days?|minutes?|seconds?|grams|bar|readings?|bottles?|closures?|things?|entries|mg\/L|(?:calm |shake |calm shake )?tests?)\b/;
const ORDINAL = /(?:day|Entry|version|up to) $/;
const GRAVITY = /^[01]\.\d{3,4}$/;

/** Numbers in a sentence that stand without a unit and are neither a gravity nor a place in a row. */
function bareNumbers(sentence: string): string[] {
  const own = sentence
    .replace(/“[^”]*”/g, '“”')
    .replaceAll('996 or 0.996', '')
    .replace(/\b[a-z]+(?:\.\w+)+/g, 'path')
    .replace(/\d+ \w+ 20\d\d at \d\d:\d\d/g, 'then')
    .replace(/\w+day \d+ \w+, about \d\d:\d\d/g, 'then')
    .split('\n')[0]!;
  return [...own.matchAll(/\d+(?:[.,]\d+)*/g)]
    .filter(({ 0: number, index }) => {
      const after = own.slice(index + number.length);
      return !(GRAVITY.test(number) || UNIT.test(after) || ORDINAL.test(own.slice(0, index)));
    })
    .map(({ 0: number }) => number);
}

describe('the sentence of every problem', () => {
  test('is whole: no hole, no code, a full stop at its end', () =>
    expect(
      breaking(
        (sentence) =>
          /undefined|NaN|\[object|null|function|\$\{| {2}/.test(sentence) ||
          !/^[A-Z0-9“].*\.$/s.test(sentence),
      ),
    ).toEqual([]));

  test('says what to do next', () => expect(breaking((sentence) => !whatToDo.test(sentence))).toEqual([]));

  test('gives every quantity its unit', () =>
    expect(breaking((sentence) => bareNumbers(sentence).length > 0)).toEqual([]));

  test('never speaks of a gallon without its country', () =>
    expect(breaking((sentence) => /(?<!US |imperial )gallon/i.test(sentence))).toEqual([]));

  test('never blames, and never calls lower worse', () =>
    expect(
      breaking((sentence) =>
        /!|\b(?:your (?:fault|mistake)|you (?:forgot|failed|should have)|invalid|illegal|worse|sorry|oops)\b/i.test(
          sentence,
        ),
      ),
    ).toEqual([]));
});

test.each<[Problem, string]>([
  [
    everyProblem['not-dry'],
    'The wine reads 1.010 and must read 0.996 or lower (lower is later). The difference is about 30 grams of sugar in each litre, about 9 bar in a closed bottle. Leave it warm, and read again tomorrow.',
  ],
  [
    { code: 'too-few-readings', counted: 2, wanted: 2, hours: 47.99, hoursWanted: 48 },
    'The readings lie 47.9 hours apart; they must lie 48 hours apart. Take one more when that time is over.',
  ],
  [
    everyProblem['start-outside'],
    'The start reading is 1.056; the sheet has 1.062 to 1.072. If the juice is well mixed, that is about 2.2 litres of water too much. Stir and read again first, then check the fill mark and its unit.',
  ],
])('tells the numbers that decide', (problem, sentence) => expect(told(problem)).toBe(sentence));

test('speaks in the units of the maker', () =>
  expect(CHOICES.map((chosen) => told(everyProblem['vessel-too-small'], chosen).split(':')[0])).toEqual([
    'The vessel holds 24 litres to the brim, and the batch is 23 litres',
    'The vessel holds 6.3 US gallons to the brim, and the batch is 6.1 US gallons',
    'The vessel holds 5.3 imperial gallons to the brim, and the batch is 5.1 imperial gallons',
  ]));

test.each<[Problem, string]>([
  [
    everyProblem['journal-mismatch'],
    'Entry 44 of the record (gate passed) does not fit what came before it. The wine reads 1.010 and must read 0.996 or lower (lower is later). Everything before it is safe: export the batch, and go on from there.',
  ],
  [
    everyProblem['no-second-copy'],
    'The batch is kept, but not twice: its second copy failed. There is no room left on this device. Export the batch now and again until there is one.',
  ],
])(
  'a problem with another as its reason tells what is wrong there, and what to do here',
  (problem, sentence) => expect(told(problem)).toBe(sentence),
);
