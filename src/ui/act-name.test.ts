import { expect, test } from 'vitest';
import { builtInSheets } from '../procedure/kits';
import { en } from '../text/en';
import { actName } from './act-name';

test.each([
  ['wash gear 1', 'Wash the gear'],
  ['wash up gear 1', 'Wash up the gear'],
  ['add sachet sorbate', 'Add a sachet: “Potassium sorbate, stabiliser”'],
  ['stir in sulphite', 'Stir it in: “Metabisulphite”'],
  ['read towards dry 2', 'Read the gravity towards the finish'],
  ['from a later edition 1', 'from a later edition 1'],
])('the act %s is called “%s”', (id, name) => expect(actName(id, builtInSheets[0]!, en)).toBe(name));
