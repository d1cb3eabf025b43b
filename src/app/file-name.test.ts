import { expect, test } from 'vitest';
import { fileName } from './file-name';

test.each([
  ['Hedge Lantern, 3 May 2031', 'hedge-lantern-3-may-2031.batch.json'],
  ['Rosé d’été / Nr. 2', 'rose-d-ete-nr-2.batch.json'],
  ['../../etc', 'etc.batch.json'],
  ['果実酒', 'fallbright.batch.json'],
])('a batch called “%s” is kept as %s', (words, name) => expect(fileName(words, 'batch')).toBe(name));

test('a sheet is told from a batch by its name', () =>
  expect(fileName('Chalk Meadow', 'kit sheet')).toBe('chalk-meadow.kit-sheet.json'));
