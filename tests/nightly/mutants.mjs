import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { format } from 'prettier';
import { build } from 'vite';
import { withMutants } from './mutants/schemata.mjs';
import { EQUIVALENT } from './mutants/equivalent.mjs';

/** @typedef {import('./mutants/schemata.mjs').Mutant} Mutant */

const ROOT = join(import.meta.dirname, '../..');
const REPORT = join(import.meta.dirname, 'mutants.md');
const SILENT_FOR = 120_000;
/** Each mutant loads its specs anew, and a process never forgets what it loaded. */
const AT_ONCE = 60;

const GATES = readdirSync(join(ROOT, 'src/domain/gates')).map((file) => `src/domain/gates/${file}`);

/** What is broken: every gate, the judge, and what the machine asks. */
const BROKEN = [
  ...GATES.filter((file) => !file.endsWith('.test.ts')),
  ...['judge', 'yielding', 'passed-before'].map((file) => `src/procedure/${file}.ts`),
  ...['batch-machine', 'refusal', 'remedies', 'reason', 'may-yield'].map((file) => `src/workflow/${file}.ts`),
  ...['act', 'gate', 'reading', 'choice'].map((file) => `src/workflow/${file}-refusals.ts`),
];

/** The gate suite, the cheapest first. */
const SUITE = [
  ...GATES.filter((file) => file.endsWith('.test.ts')),
  'src/workflow/may-yield.test.ts',
  'tests/gates-cannot-be-skipped.test.ts',
  ...['judge', 'yielding', 'passed-before', 'asked-again'].map((spec) => `src/procedure/${spec}.test.ts`),
  ...['batch-machine', 'refusal', 'act-refusals', 'gate-refusals', 'reading-refusals', 'choice-refusals'].map(
    (spec) => `src/workflow/${spec}.test.ts`,
  ),
  'src/workflow/evidence.test.ts',
  'src/workflow/mishap-refusals.test.ts',
  'tests/mishaps-lead-back.test.ts',
  'tests/whole-batches.test.ts',
  'tests/golden/golden.test.ts',
  'tests/joining.test.ts',
  'tests/sealed-acts.test.ts',
].filter((f) => existsSync(join(ROOT, f)));

const nameOf = (/** @type {string} */ spec) => spec.replace(/^.*\//, '').replace(/\.ts$/, '');

/** The suite built once, with every mutant asleep in it. @param {string} folder @returns {Promise<Mutant[]>} */
async function buildSuite(folder) {
  /** @type {Mutant[]} */
  const mutants = [];
  await build({
    configFile: false,
    root: ROOT,
    logLevel: 'error',
    plugins: [
      {
        name: 'mutants',
        enforce: 'pre',
        transform: (code, id) => {
          const file = id.slice(ROOT.length + 1);
          return BROKEN.includes(file) ? { code: withMutants(file, code, mutants), map: null } : undefined;
        },
      },
    ],
    resolve: { alias: { vitest: join(import.meta.dirname, 'mutants/small-vitest.mjs') } },
    ssr: { noExternal: true },
    build: {
      ssr: true,
      outDir: folder,
      copyPublicDir: false,
      minify: false,
      rollupOptions: {
        input: {
          'small-vitest': join(import.meta.dirname, 'mutants/small-vitest.mjs'),
          ...Object.fromEntries(SUITE.map((spec) => [nameOf(spec), join(ROOT, spec)])),
        },
        output: { entryFileNames: '[name].mjs', chunkFileNames: '[name]-[hash].mjs' },
      },
    },
  });
  writeFileSync(join(folder, 'suite.json'), JSON.stringify({ mutants, specs: SUITE.map(nameOf) }));
  return mutants;
}

/**
 * Runs some mutants in one process; whichever it hangs on is caught by that, and a new process goes on after it.
 * @param {string} folder @param {readonly number[]} ids @param {Map<number, string>} caught
 */
async function run(folder, ids, caught) {
  for (let left = ids; left.length > 0; left = left.filter((id) => !caught.has(id))) {
    const child = spawn(
      process.execPath,
      [join(import.meta.dirname, 'mutants/run-mutants.mjs'), folder, ...left.map(String)],
      {
        cwd: ROOT,
        stdio: ['ignore', 'pipe', 'inherit'],
        env: { ...process.env, JOURNALS: '120', SEED: '11' },
      },
    );
    let late = setTimeout(() => child.kill('SIGKILL'), SILENT_FOR);
    for await (const line of createInterface({ input: child.stdout })) {
      clearTimeout(late);
      late = setTimeout(() => child.kill('SIGKILL'), SILENT_FOR);
      const { id, by } = JSON.parse(line);
      caught.set(id, by);
      if (caught.size % 50 === 0) console.log(`${caught.size} mutants run`);
    }
    clearTimeout(late);
    const hanging = left.find((id) => !caught.has(id));
    if (hanging !== undefined) caught.set(hanging, 'it never ends');
  }
}

/**
 * With `--surviving`, what the last report says is caught is taken from there: while specs are only added, that holds.
 * @param {readonly Mutant[]} mutants @param {Map<number, string>} caught
 */
function takeOver(mutants, caught) {
  if (!process.argv.includes('--surviving') || !existsSync(REPORT)) return;
  const rows = readFileSync(REPORT, 'utf8')
    .split('\n')
    .map((row) => row.split(/(?<!\\)\|/).map((part) => part.trim()));
  /** @type {Map<string, string>} */
  const before = new Map(
    rows
      .filter(([, , , by = '']) => /\.test: |never ends/.test(by))
      .map(([, change = '', file = '', by = '']) => [`${file.replace(/:\d+$/, '')} ${change}`, by]),
  );
  for (const { id, file, change } of mutants) {
    const by = before.get(`${file} \`${cell(change)}\``);
    if (by) caught.set(id, by);
  }
}

const cell = (/** @type {string} */ text) => text.replaceAll('|', '\\|').replaceAll('`', "'");

/** @param {readonly Mutant[]} mutants @param {Map<number, string>} caught */
async function report(mutants, caught) {
  const explained = (/** @type {Mutant} */ { file, change }) => EQUIVALENT[`${file}: ${change}`];
  const row = (/** @type {Mutant} */ mutant) => {
    const by = caught.get(mutant.id);
    const verdict = by ? cell(by) : (explained(mutant) ?? '**survives**');
    return `| \`${cell(mutant.change)}\` | ${mutant.file}:${mutant.line} | ${verdict} |`;
  };
  const surviving = mutants.filter((mutant) => !caught.get(mutant.id));
  const open = surviving.filter((mutant) => !explained(mutant));
  const summary =
    `${mutants.length} mutants, ${mutants.length - surviving.length} caught by the gate suite alone, ` +
    `${surviving.length - open.length} explained as equivalent, ${open.length} survive.`;
  const rows = [...open, ...mutants.filter((mutant) => !open.includes(mutant))].map(row);
  const lines = [
    '# Mutants',
    '',
    summary,
    '',
    '| mutant | file | caught by |',
    '| --- | --- | --- |',
    ...rows,
  ];
  writeFileSync(REPORT, await format(lines.join('\n'), { parser: 'markdown', printWidth: 110 }));
  console.log(summary);
  return open.length;
}

const folder = mkdtempSync(join(ROOT, 'node_modules/.mutants-'));
try {
  const mutants = await buildSuite(folder);
  const caught = new Map();
  await run(folder, [0], caught);
  if (caught.get(0)) throw new Error(`The gate suite is red with no mutant awake: ${caught.get(0)}`);
  takeOver(mutants, caught);
  const left = mutants.filter(({ id }) => !caught.has(id));
  const late = left.filter(({ early }) => !early).map(({ id }) => id);
  while (late.length > 0) await run(folder, late.splice(0, AT_ONCE), caught);
  for (const { id } of left.filter(({ early }) => early)) await run(folder, [id], caught);
  process.exitCode = (await report(mutants, caught)) > 0 ? 1 : 0;
} finally {
  rmSync(folder, { recursive: true, force: true });
}
