import { describe, expect, test } from 'vitest';
import { builtInSheets } from './kits';
import { MAY_GO, type Contents } from './contents';
import type { KitSheet, Sachet } from './kit-sheet';
import { parseKitSheet, readKitSheet } from './parse-kit-sheet';

const [lantern] = builtInSheets as [KitSheet, ...KitSheet[]];
const faultsOf = (given: unknown): string[] => {
  const parsed = parseKitSheet(given);
  if (parsed.ok || parsed.problem.code !== 'sheet-refused')
    return [parsed.ok ? 'accepted' : parsed.problem.code];
  return parsed.problem.faults.map(({ path, given: value, rule }) => `${path} ${value}: ${rule}`);
};
const withSachets = (change: (sachets: Sachet[]) => Sachet[]): KitSheet => ({
  ...lantern,
  sachets: change(lantern.sachets),
});
const change = (id: string, to: Partial<Sachet>): KitSheet =>
  withSachets((sachets) => sachets.map((sachet) => (sachet.id === id ? { ...sachet, ...to } : sachet)));
const without = (id: string): KitSheet =>
  withSachets((sachets) => sachets.filter((sachet) => sachet.id !== id));

describe('a kit sheet from a file', () => {
  test('comes through as it is when nothing is wrong', () => {
    const text = JSON.stringify(lantern);
    expect(readKitSheet(text)).toEqual({ ok: true, value: lantern });
  });

  test.each([
    ['is not JSON', '{', 'not-json'],
    ['is JSON of another kind', '{"recipe":1}', 'not-a-kit-sheet'],
    ['is a list', '[]', 'not-a-kit-sheet'],
    ['is of a later version', '{"format":"fallbright kit sheet","version":2}', 'newer-format'],
  ])('that %s is refused as such', (_, text, code) => {
    const read = readKitSheet(text);
    expect(!read.ok && read.problem.code).toBe(code);
  });

  test.each<[what: string, given: unknown, faults: string[]]>([
    ['a volume of a bathtub', { ...lantern, batchLitres: 200 }, ['batchLitres 200: outside']],
    [
      'a start gravity of 1.3',
      { ...lantern, start: { lowest: 1.3, highest: 1.31 } },
      ['start.lowest 1.3: outside', 'start.highest 1.31: outside'],
    ],
    [
      'a dry limit of 1.006',
      { ...lantern, dry: { ...lantern.dry, limit: 1.006 } },
      ['dry.limit 1.006: outside'],
    ],
    ['a number written as a word', { ...lantern, batchLitres: 'many' }, ['batchLitres "many": wrong-kind']],
    ['a key of somebody’s own', { ...lantern, secret: 1 }, ['secret "secret": unknown-key']],
    ['a missing name', { ...lantern, name: undefined }, ['name nothing: missing']],
    [
      'contents that nobody knows',
      { ...lantern, sachets: [{ ...lantern.sachets[0], contents: ['glitter'] }] },
      ['sachets.0.contents.0 "glitter": not-one-of'],
    ],
    [
      'a range the wrong way round',
      { ...lantern, start: { lowest: 1.08, highest: 1.07 } },
      ['start.lowest 1.08: lowest-above-highest'],
    ],
    ['no yeast', without('yeast'), ['sachets no yeast: no-yeast']],
    [
      'something sweet without sorbate',
      without('sorbate'),
      ['sachets sweetening pack: sweetens-without-sorbate'],
    ],
    ['sorbate without sulphite', without('sulphite'), ['sachets sorbate: sorbate-without-sulphite']],
    ['two sachets of one name', change('finings', { id: 'yeast' }), ['sachets.5.id yeast: twice']],
    ['two sachets in one place', change('finings', { order: 1 }), ['sachets.5.order 1: order-twice']],
    ['sorbic acid above 400 mg/L', change('sorbate', { grams: 7 }), ['sachets 454 mg/L: too-much-sorbate']],
    [
      'sulphur dioxide above 150 mg/L',
      change('sulphite', { grams: 6.5 }),
      ['sachets 163 mg/L: too-much-sulphite'],
    ],
    [
      'a note on a step that is not',
      { ...lantern, notes: [{ step: 'dance', show: 'la' }] },
      ['notes.0.step dance: unknown-act'],
    ],
    [
      'a reserve of half the batch',
      { ...lantern, batchLitres: 6, firstWaterLitres: 1, reserveLitres: 2 },
      ['reserveLitres 2: reserve-too-large'],
    ],
  ])('is refused for %s', (_, given, faults) => expect(faultsOf(given)).toEqual(faults));
});

describe('where things may go follows from what they are', () => {
  const anywhere = ['mix', 'pitch', 'ferment', 'stabilise', 'fine', 'clear', 'bottle'] as const;
  const cases = (Object.keys(MAY_GO) as Contents[]).flatMap((contents) =>
    anywhere.map((when) => [contents, when, (MAY_GO[contents] as readonly string[]).includes(when)] as const),
  );
  test.each(cases)('%s in %s: %s', (contents, when, allowed) => {
    const extra = { ...(lantern.sachets[0] as Sachet), id: 'extra', contents: [contents], when, order: 9 };
    const faults = faultsOf(withSachets((sachets) => [...sachets, extra]));
    expect(faults.includes(`sachets.6.when ${when}: may-not-go-there`)).toBe(!allowed);
  });

  test('a sachet of two things goes only where both may', () =>
    expect(faultsOf(change('sulphite', { contents: ['sulphite', 'sorbate'], when: 'bottle' }))).toContain(
      'sachets.2.when bottle: may-not-go-there',
    ));
});
