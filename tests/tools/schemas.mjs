import { writeFile } from 'node:fs/promises';
import { runnerImport } from 'vite';

/** Writes the published JSON Schemas anew. A test says when that is due. */
const { module } = await runnerImport('/tests/tools/published-schemas.ts', {
  configFile: false,
  logLevel: 'error',
});
for (const [name, text] of await module.publishedSchemas()) {
  await writeFile(`public/${name}`, text);
  console.log(`public/${name}`);
}
