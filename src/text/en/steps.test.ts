import { describe, expect, test } from 'vitest';
import { everyAct } from '../../../tests/story/every-act';
import { FIRST_PREFERENCES } from '../../domain/preferences';
import type { VolumeUnit } from '../../domain/volume';
import { CONTENTS, MAY_GO } from '../../procedure/contents';
import type { Sachet } from '../../procedure/kit-sheet';
import { STEPS, type Act, type StepId } from '../../procedure/step';
import { formatsFor } from '../formats';
import type { StepWords } from '../text';
import { cautions } from './cautions';
import { steps } from './steps';

const UNITS: readonly VolumeUnit[] = ['litres', 'US gallons', 'imperial gallons'];
const formats = Object.fromEntries(
  UNITS.map((volume) => [
    volume,
    formatsFor({ preferences: { ...FIRST_PREFERENCES, volume }, language: 'en', timeZone: 'UTC' }),
  ]),
);
const wordsOf = (act: Act, volume: VolumeUnit = 'litres'): StepWords =>
  steps[act.step](act, formats[volume]!);

/** Steps that come again: each as it is the first time, and as it is later. */
const again = everyAct.flatMap((act): Act[] => [act, { ...act, nth: act.nth + 1 }, { ...act, nth: 101 }]);

const sachet = (rest: Partial<Sachet>): Act => ({
  id: 'add sachet trial',
  step: 'add sachet',
  nth: 1,
  done: false,
  kind: 'add',
  sachet: {
    id: 'trial',
    printed: 'Plain paper packet',
    contents: ['yeast'],
    count: 1,
    when: 'pitch',
    order: 1,
    dissolveFirst: false,
    stirSeconds: 0,
    gapMinutes: 0,
    ...rest,
  },
});
const everySachet = CONTENTS.flatMap((contents) =>
  MAY_GO[contents].flatMap((when) =>
    [1, 2, 3].map((count) => sachet({ contents: [contents], when, count, dissolveFirst: count === 2 })),
  ),
);

const all = [...again, ...everySachet];
const count = (sentence: string): number => sentence.trim().split(/\s+/).length;
const sentences = (text: string): string[] => text.split(/(?<=[.?])\s+/);
const texts = (words: StepWords): string[] => Object.values(words);

/** Acts whose words break a rule, with those words: none, when all is well. */
function breaking(rule: (words: StepWords, act: Act) => string | false | undefined): string[] {
  const broken = all.flatMap((act) => UNITS.map((unit) => ({ act, words: rule(wordsOf(act, unit), act) })));
  return [
    ...new Set(broken.filter(({ words }) => words).map(({ act, words }) => `${act.step}: ${String(words)}`)),
  ];
}

describe('the words of every act of the built-in sheets', () => {
  test('cover every step that a plan can hold', () => {
    const reached = new Set<StepId>(everyAct.map(({ step }) => step));
    const inNoSheet: StepId[] = [];
    expect(STEPS.filter((step) => !reached.has(step))).toEqual(inNoSheet);
  });

  test('show one sentence of at most twelve words', () =>
    expect(
      breaking(({ show }) => (count(show) > 12 || sentences(show).length > 1 || !show.endsWith('.')) && show),
    ).toEqual([]));

  test('say one or two short sentences, and one more where a step comes again', () =>
    expect(
      breaking(({ say }, { nth }) => {
        const said = sentences(say);
        return (said.length > (nth > 1 ? 3 : 2) || said.some((sentence) => count(sentence) > 26)) && say;
      }),
    ).toEqual([]));

  test('give a reason in one or two sentences', () =>
    expect(breaking(({ why }) => sentences(why).length > 2 && why)).toEqual([]));

  test('are whole sentences without a hole in them', () =>
    expect(
      breaking((words) =>
        texts(words).find(
          (text) => /undefined|NaN|\[object|null| {2}|\$\{/.test(text) || !/^[A-Z].*[.?]$/s.test(text),
        ),
      ),
    ).toEqual([]));

  test('never speak of a gallon without its country', () =>
    expect(breaking((words) => texts(words).find((text) => /(?<!US |imperial )gallon/i.test(text)))).toEqual(
      [],
    ));

  test('name nothing and nobody but what is printed on the sachet', () =>
    expect(
      breaking((words) =>
        texts(words)
          .map((text) => text.replace(/“[^”]*”/g, ''))
          .find((text) => /(?<![.?:] |^|[A-Za-z])(?!US\b|I\b|C\b|F\b|L\b)[A-Z]\w*/.test(text)),
      ),
    ).toEqual([]));
});

describe('a step that comes again says so', () => {
  test.each<StepId>([
    'stir must',
    'read start',
    'look for life',
    'read for the move',
    'read towards dry',
    'stir out gas',
  ])('%s', (step) => {
    const act = everyAct.find((each) => each.step === step && each.nth === 1)!;
    const first = wordsOf(act);
    const second = wordsOf({ ...act, nth: 2 });
    expect([first.show, first.say].join(' ')).not.toMatch(/once more|one more/i);
    expect(second.show).toMatch(/once more/);
    expect(second.say).toMatch(/once more|one more/i);
  });
});

describe('a sachet', () => {
  test.each([
    [1, 'Sprinkle “Plain paper packet” onto the juice.'],
    [2, 'Sprinkle both sachets of “Plain paper packet” onto the juice.'],
    [3, 'Sprinkle all three sachets of “Plain paper packet” onto the juice.'],
  ])('of which there are %i is counted aloud, by its printed name', (of, show) =>
    expect(wordsOf(sachet({ count: of })).show).toBe(show),
  );

  test('is shown and said by the words printed on it, whatever it holds', () =>
    expect(
      breaking(
        ({ show, say }, act) =>
          act.kind === 'add' &&
          !(show.includes(act.sachet.printed) && say.includes(act.sachet.printed)) &&
          show,
      ),
    ).toEqual([]));

  test.each<[string, Partial<Sachet>, string | undefined]>([
    ['yeast has none', { contents: ['yeast'] }, undefined],
    [
      'sulphite fumes',
      { contents: ['sulphite'], when: 'stabilise', dissolveFirst: true, allergen: 'sulphite' },
      cautions.fumes,
    ],
    [
      'sorbate can foam',
      { contents: ['sorbate'], when: 'stabilise', dissolveFirst: true },
      cautions.eruption,
    ],
    [
      'both in one do both',
      { contents: ['sulphite', 'sorbate'], when: 'stabilise', dissolveFirst: true },
      `${cautions.fumes} ${cautions.eruption}`,
    ],
    ['food into a working wine can foam', { contents: ['nutrient'], when: 'ferment' }, cautions.eruption],
    ['food into fresh juice cannot', { contents: ['nutrient'], when: 'mix' }, undefined],
    ['fish is said', { contents: ['fish finings'], when: 'fine', allergen: 'fish' }, cautions.allergen.fish],
    [
      'milk is said',
      { contents: ['gelatine finings'], when: 'fine', allergen: 'milk' },
      cautions.allergen.milk,
    ],
  ])('cautions where someone can be hurt: %s', (_, rest, caution) =>
    expect(wordsOf(sachet(rest)).caution).toBe(caution),
  );
});

describe('what can hurt is said before it', () => {
  test.each<[StepId, RegExp]>([
    ['mix sanitiser', /asthma/],
    ['wash gear', /Hot water/],
    ['fill to mark', /25 kilograms/],
    ['close with airlock', /carbon dioxide/],
    ['siphon off', /never by mouth/],
    ['stir out gas', /one second/],
    ['fill and close', /break in the corker/],
    ['look at closures', /may burst/],
  ])('%s', (step, hazard) =>
    expect(wordsOf(everyAct.find((act) => act.step === step)!).caution).toMatch(hazard),
  );
});
