import { expect, test } from 'vitest';
import { pictureOf, pictureOfMishap } from './picture-of';

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

test.each([
  ['airlock dry', 'airlock'],
  ['airlock sucked in', 'airlock'],
  ['silent airlock', 'airlock'],
  ['wrong sachet', undefined],
] as const)('“%s” has the picture of the %s', (mishap, picture) =>
  expect(pictureOfMishap(mishap)).toBe(picture),
);
