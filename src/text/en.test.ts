import { expect, test } from 'vitest';
import { en } from './en';

/** Every plain sentence of the language, with its path; what is made from facts is looked at in its own tests. */
function plain(part: unknown, path: string): [path: string, text: string][] {
  if (typeof part === 'string') return [[path, part]];
  return typeof part === 'object' && part !== null
    ? Object.entries(part).flatMap(([key, inner]) => plain(inner, `${path}.${key}`))
    : [];
}
const all = plain(en, 'en');

test.each<[rule: string, broken: RegExp]>([
  ['speaks of a gallon without its country', /(?<!US |imperial )gallon/i],
  ['calls lower worse', /worse/i],
  ['has a hole in it', /undefined|NaN|\[object|\$\{|^$/],
  ['tells anyone to suck at a hose', /(?<!never )by mouth/i],
])('nothing that is said %s', (_, broken) => expect(all.filter(([, text]) => broken.test(text))).toEqual([]));
