import { expect, test } from 'vitest';
import { linesOf } from './lines-of';

test.each([
  ['Wine yeast', ['Wine yeast']],
  ['Potassium sorbate, stabiliser', ['Potassium', 'sorbate,', 'stabiliser']],
  ['Oak, to be stirred in', ['Oak, to be', 'stirred in']],
  ['Carboxymethylcellulose', ['Carboxymethylcellulose']],
])('%s', (words, lines) => expect(linesOf(words, 13)).toEqual(lines));
