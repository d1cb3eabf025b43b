const KEBAB = /^[a-z][a-z0-9]*(-[a-z0-9]+)*$/;
const LANGUAGE = /^[a-z]{2,3}$/;

/** @typedef {(path: string) => string} Read */
/** @typedef {{ files: Record<string, string>, next: string }} Plan the text of each file to write, and what is left to do */

/** @param {string} name */
const camel = (name) => name.replace(/-(.)/g, (_, letter) => letter.toUpperCase());

/** @param {string} name */
const spaced = (name) => name.replaceAll('-', ' ');

/**
 * @param {string} name
 * @returns {Plan}
 */
function sum(name) {
  const path = `src/domain/sums/${name}`;
  const file = `/**
 * What it gives, in one sentence.
 * Units
 * Range
 * Errors
 * Source
 */
export function ${camel(name)}(given: number): number {
  throw new RangeError('still to be written');
}
`;
  const test = `import { describe, expect, test } from 'vitest';
import { ${camel(name)} } from './${name}';

/** From the source that the docstring names. */
const published: readonly { given: number; expected: number }[] = [];

describe('${spaced(name)}', () => {
  test('is checked against published values', () => expect(published).not.toEqual([]));

  test.each(published)('of $given is $expected', ({ given, expected }) =>
    expect(${camel(name)}(given)).toBeCloseTo(expected, 4),
  );
});
`;
  return {
    files: { [`${path}.ts`]: file, [`${path}.test.ts`]: test },
    next: `Fill in the docstring's four lines (eslint asks for them), the sum, and the published values of its test.`,
  };
}

/**
 * A copy of a complete sheet, so that it passes the door from the first minute: every number in it is to be replaced.
 * @param {string} name
 * @param {Read} read
 * @returns {Plan}
 */
function kit(name, read) {
  const folder = 'src/procedure/kits';
  const title = spaced(name).replace(/\b./g, (letter) => letter.toUpperCase());
  const sheet = { ...JSON.parse(read(`${folder}/hedge-lantern.json`)), id: name, name: title, edition: '1' };
  const index = read(`${folder}/index.ts`)
    .replace(
      /(import \w+ from '.\/[\w-]+\.json' with \{ type: 'json' \};\n)(?!import \w+ from '.\/)/,
      `$1import ${camel(name)} from './${name}.json' with { type: 'json' };\n`,
    )
    .replace(/= \[([\w, \n]+?),?\s*\](?=\.map)/, `= [$1, ${camel(name)}]`);
  return {
    files: {
      [`${folder}/${name}.json`]: `${JSON.stringify(sheet, null, 2)}\n`,
      [`${folder}/index.ts`]: index,
    },
    next: 'Replace every number by the new kit’s own, and its sources: the tests walk each built-in sheet to the last bottle.',
  };
}

/**
 * @param {string} code
 * @returns {Plan}
 */
function language(code) {
  const file = `import type { Text } from './text';

export const ${code}: Text = {};
`;
  const test = `import { expect, test } from 'vitest';
import { en } from './en';
import { ${code} } from './${code}';

const sentencesIn = (words: unknown): string[] => {
  if (typeof words === 'string') return words.includes(' ') ? [words] : [];
  return typeof words === 'object' && words ? Object.values(words).flatMap(sentencesIn) : [];
};

test('no sentence of ${code} is still the English one', () => {
  const english = new Set(sentencesIn(en));
  expect(sentencesIn(${code})).not.toEqual([]);
  expect(sentencesIn(${code}).filter((sentence) => english.has(sentence))).toEqual([]);
});
`;
  return {
    files: { [`src/text/${code}.ts`]: file, [`src/text/${code}.test.ts`]: test },
    next: 'The compiler ("npm run check") names what is missing until every word is there. Then offer it beside "en".',
  };
}

/** @type {Record<string, { name: RegExp, example: string, plan: (name: string, read: Read) => Plan }>} */
export const KINDS = {
  sum: { name: KEBAB, example: 'sugar-for-gravity', plan: sum },
  kit: { name: KEBAB, example: 'stone-orchard', plan: kit },
  language: { name: LANGUAGE, example: 'de', plan: language },
};
