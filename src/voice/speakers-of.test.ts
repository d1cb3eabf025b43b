import { describe, expect, test } from 'vitest';
import type { Voice } from './engine';
import { speakersOf } from './speakers-of';

const voice = (id: string, language: string): Voice => ({ id, name: id, language, local: true });
const island = voice('island', 'en_GB');
const plains = voice('plains', 'en-US');
const rhine = voice('rhine', 'de-DE');

describe('the voices that speak a language', () => {
  test.each<[string, readonly Voice[], Voice[]]>([
    ['come from all of its countries, however written', [island, rhine, plains], [island, plains]],
    [
      'are named once, though the device names one twice',
      [plains, island, { ...plains, name: 'again' }],
      [plains, island],
    ],
    ['are none where nobody speaks it', [rhine], []],
  ])('%s', (_, voices, expected) => expect(speakersOf('en', voices)).toEqual(expected));
});
