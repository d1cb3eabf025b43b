import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { publishedSchemas } from './published-schemas';

test('the published schemas are those that the code makes (if not: node tests/tools/schemas.mjs)', async () => {
  const published = readdirSync('public').filter((name) => name.endsWith('.schema.json'));
  expect(new Map(published.map((name) => [name, readFileSync(`public/${name}`, 'utf8')]))).toEqual(
    await publishedSchemas(),
  );
});
