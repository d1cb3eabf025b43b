import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { installPackages } from './install.mjs';
import { KINDS } from './new-files.mjs';
import { ROOT, runModule } from './run.mjs';

/**
 * @param {string} message
 * @returns {never}
 */
function refuse(message) {
  console.error(message);
  process.exit(2);
}

const [kind = '', name = ''] = process.argv.slice(2);
const chosen = KINDS[kind];
if (!chosen) refuse(`Say what to make: npm run new ${Object.keys(KINDS).join('|')} <name>`);
if (!chosen.name.test(name)) refuse(`A ${kind} needs a name such as "${chosen.example}".`);

const { files, next } = chosen.plan(name, (path) => readFileSync(join(ROOT, path), 'utf8'));
const taken = Object.keys(files).find((path) => path.includes(name) && existsSync(join(ROOT, path)));
if (taken) refuse(`${taken} is there already.`);
for (const [path, text] of Object.entries(files)) {
  writeFileSync(join(ROOT, path), text);
  console.log(path);
}
if (await installPackages())
  await runModule('prettier/bin/prettier.cjs', ['--write', '--log-level', 'warn', ...Object.keys(files)]);
console.log(next);
