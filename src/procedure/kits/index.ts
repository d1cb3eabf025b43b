import type { KitSheet } from '../kit-sheet';
import { parseKitSheet } from '../parse-kit-sheet';
import chalkMeadow from './chalk-meadow.json' with { type: 'json' };
import emberQuay from './ember-quay.json' with { type: 'json' };
import hedgeLantern from './hedge-lantern.json' with { type: 'json' };

/** The built-in sheets, in exactly the format that an instructor exports. They pass the same door. */
export const builtInSheets: readonly KitSheet[] = [hedgeLantern, chalkMeadow, emberQuay].map((given) => {
  const parsed = parseKitSheet(given);
  if (!parsed.ok) throw new Error(`built-in sheet refused: ${JSON.stringify(parsed.problem)}`);
  return parsed.value;
});
