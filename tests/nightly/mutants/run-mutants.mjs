import { readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { join } from 'node:path';

/**
 * In a process of its own: wakes one mutant after another and runs the gate suite until a spec is red. Told on standard
 * output, a line a mutant, so that whoever started it knows where it hangs.
 */
const [folder = '', ...ids] = process.argv.slice(2);
/** @type {{ mutants: { id: number, file: string }[], specs: string[] }} */
const { mutants, specs } = JSON.parse(readFileSync(join(folder, 'suite.json'), 'utf8'));
const at = (/** @type {string} */ file) => pathToFileURL(join(folder, file)).href;

console.info = () => undefined;
Error.stackTraceLimit = 0;
globalThis.mutant = ids.length === 1 ? Number(ids[0]) : 0;
const runner = await import(at('small-vitest.mjs'));

/** The spec that lies beside the file first, then the cheap ones. @param {string} file */
function inOrder(file) {
  const own = file.replace(/^.*\//, '').replace('.ts', '.test');
  return specs.toSorted((a, b) => Number(b.endsWith(own)) - Number(a.endsWith(own)));
}

/** @param {{ id: number, file: string }} mutant */
async function caughtBy({ id, file }) {
  globalThis.mutant = id;
  for (const spec of inOrder(file)) {
    runner.forget();
    try {
      await import(at(`${spec}.mjs`) + `?mutant=${id}`);
      for (const { name, run } of runner.cases) {
        try {
          await run();
        } catch {
          return `${spec}: ${name}`;
        }
      }
    } catch {
      return `${spec}: does not even load`;
    }
  }
  return '';
}

for (const given of ids) {
  const id = Number(given);
  const mutant = mutants.find((each) => each.id === id) ?? { id, file: '' };
  process.stdout.write(`${JSON.stringify({ id, by: await caughtBy(mutant) })}\n`);
}
process.exit(0);
