import { describe, expect, test } from 'vitest';
import type { Voice } from './engine';
import { voiceFor } from './voice-for';

const voice = (id: string, language: string, local = true): Voice => ({ id, name: id, language, local });
const far = voice('far', 'en-GB', false);
const island = voice('island', 'en_GB');
const plains = voice('plains', 'en-US');
const rhine = voice('rhine', 'de-DE');

describe('the voice for a language', () => {
  test.each<[string, readonly Voice[], string | undefined, Voice | undefined]>([
    ['is the chosen one', [rhine, island, plains], 'plains', plains],
    ['is another where the chosen one is gone', [rhine, island], 'plains', island],
    ['needs no network where there is such a one', [far, plains], undefined, plains],
    ['needs the network where there is no other', [rhine, far], undefined, far],
    ['is none where nobody speaks it', [rhine], undefined, undefined],
  ])('%s', (_, voices, chosen, expected) => expect(voiceFor(voices, 'en', chosen)).toEqual(expected));
});
