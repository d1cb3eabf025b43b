import type { Formats } from '../formats';
import { quoted } from './counted';

/** The pad that tells of a sachet in the maker's hand. */
const stillFull = (printed: string): string => `${quoted(printed)} is still full`;

/** The empty wrappers, counted against what went in: asked by the guide, and on the screen. */
export const wrappers = {
  title: 'The empty wrappers',
  says: (formats: Formats, names: readonly string[]): string =>
    `${formats.count(names.length)} empty ${names.length === 1 ? 'wrapper' : 'wrappers'} should lie there: ${formats.list(names.map(quoted))}. One in the bin counts, if you see it there.`,
  agree: 'that is so',
  differ: 'one too many or too few',
  tooMany: {
    title: 'One too many? Choose it:',
    which: (printed: string): string => `${quoted(printed)} is empty too`,
  },
  tooFew: {
    title: 'One too few? Look in the bin first, then choose it:',
    which: stillFull,
  },
};
