import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { KINDS } from './new-files.mjs';

const read = (path: string) => readFileSync(path, 'utf8');
const filesFor = (kind: string, name: string) => KINDS[kind]?.plan(name, read).files ?? {};

describe('npm run new', () => {
  test.each([
    [
      'sum',
      'sugar-for-gravity',
      ['src/domain/sums/sugar-for-gravity.ts', 'src/domain/sums/sugar-for-gravity.test.ts'],
    ],
    ['kit', 'stone-orchard', ['src/procedure/kits/stone-orchard.json', 'src/procedure/kits/index.ts']],
    ['language', 'de', ['src/text/de.ts', 'src/text/de.test.ts']],
  ])('%s %s writes its files', (kind, name, paths) =>
    expect(Object.keys(filesFor(kind, name))).toEqual(paths),
  );

  test.each([
    ['sum', 'SugarForGravity'],
    ['kit', '../elsewhere'],
    ['language', 'de-at'],
  ])('%s %s is no name', (kind, name) => expect(KINDS[kind]?.name.test(name)).toBe(false));

  test('a kit is one more of the built-in sheets', () => {
    const index = 'src/procedure/kits/index.ts';
    const added = filesFor('kit', 'stone-orchard')
      [index]?.split('\n')
      .filter((line) => !read(index).includes(line));
    expect(added?.map((line) => /stoneOrchard/.exec(line)?.[0])).toEqual(['stoneOrchard', 'stoneOrchard']);
  });
});
