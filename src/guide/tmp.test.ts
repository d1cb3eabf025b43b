import { test } from 'vitest';
import { everyVisit } from '../../tests/story/every-visit';
import { builtInSheets } from '../procedure/kits';
import { writeFileSync } from 'node:fs';
test.each(builtInSheets)('x $id', async (sheet) => {
  let out = '';
  for (const { title, script } of await everyVisit(sheet)) out += `\n=== ${title}\n` + script.join('\n') + '\n';
  writeFileSync(`/tmp/play-${sheet.id}.txt`, out);
}, 120000);
