import { expect, test } from 'vitest';
import { pictureOf } from './picture-of';

test.each([
  ['siphon off', 'do', 'siphon'],
  ['read towards dry', 'reading', 'reading'],
  ['check hydrometer', 'instrument', 'reading'],
  ['warm for the gas', 'temperature', 'thermometer'],
  ['top up', 'litres', 'neck'],
  ['measure brim', 'litres', 'wine'],
  ['look for life', 'judge', 'foam'],
  ['leave to clear', 'do', 'wine'],
] as const)('%s, which is to %s, has the picture of the %s', (step, kind, picture) =>
  expect(pictureOf({ step, kind })).toBe(picture),
);
