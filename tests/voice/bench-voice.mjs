import '../tools/node-version.mjs';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { cpus, tmpdir } from 'node:os';
import { join } from 'node:path';
import { format, resolveConfig } from 'prettier';
import { runnerImport } from 'vite';
import { installPackages } from '../tools/install.mjs';
import { run } from '../tools/run.mjs';

/**
 * Measures the ears on speakers that nothing was tuned on (`--tune`: on the others). `--quick`: a part of it.
 * `--every 3`: each third phrase at each level of noise, in the place of each second; all the talk.
 * `--at-once 4`: shares the speakers out to so many processes. Instead of all that: `--enrolled`, what templates would
 * add; `--curve`, what the demands on a phrase cost; `--numbers`, the numbers alone, put into the report that there is.
 */
const args = process.argv.slice(2);
const after = (/** @type {string} */ name) =>
  args.includes(name) ? args[args.indexOf(name) + 1] : undefined;
const isQuick = args.includes('--quick');
const set = args.includes('--tune') ? 'tune' : 'test';
const size = isQuick ? { phrases: 14, prose: 8 } : { phrases: Number(after('--every') ?? 2), prose: 1 };
const of = Number(after('--at-once') ?? 1);
const load = async (/** @type {string} */ path) =>
  (await runnerImport(path, { configFile: false, logLevel: 'error' })).module;

/** @param {number} nth */
async function part(nth) {
  const { measured } = await load('/tests/voice/bench/measured.ts');
  return measured(set, size, { nth, of });
}

async function allParts() {
  if (of === 1) return [await part(0)];
  const folder = mkdtempSync(join(tmpdir(), 'bench-'));
  const files = Array.from({ length: of }, (_, nth) => join(folder, `${nth}.json`));
  const script = 'tests/voice/bench-voice.mjs';
  const runs = await Promise.all(
    files.map((file, nth) =>
      run(process.execPath, [script, ...args, '--part', String(nth), '--into', file], { minutes: 120 }),
    ),
  );
  if (runs.some(({ ok }) => !ok)) throw new Error('A part of the measuring failed.');
  const parts = files.map((file) => JSON.parse(readFileSync(file, 'utf8')));
  rmSync(folder, { recursive: true });
  return parts;
}

/** How, when and on what something was measured. */
function byWhat() {
  const { sha256 } = JSON.parse(readFileSync('src/voice/ear/engine/pack.json', 'utf8'));
  return `by
\`npm run bench:voice -- ${args.join(' ')}\` on ${new Date().toISOString().slice(0, 10)}: Node ${process.version},
${cpus()[0]?.model ?? 'one processor'}, ear pack ${sha256.slice(0, 12)}`;
}

const HEAD = `# How well the ears hear

Synthetic voices only, of speakers that nothing was tuned on, but for how short an "eight" may be, on rms; no person was
heard. Written ${byWhat()}.
`;
const CURVE_HEAD = `# What the demands on a phrase cost

How the thresholds of \`hearing-of.ts\` were chosen: on the tuning voices alone (\`speakers.ts\`), every sound
decoded once and weighed by each row, which demands so much of \`margin\` and \`inside\`. In front, how much of what is on
offer is understood; then how often something acted that should not have. The rows that demand nothing miss what the engine itself
cannot tell: a larger acoustic model, or one trained on kitchens, would move the whole curve, and recordings of people would tell
how far it holds for them. What the voices make of it that nothing was tuned on: \`results.md\`. Written ${byWhat()}.
`;

/** @param {string} file @param {string} report */
async function keep(file, report, head = HEAD) {
  const text = `${head}\n${report}`;
  writeFileSync(file, await format(text, { ...(await resolveConfig(file)), filepath: file }));
}

if (!(await installPackages())) process.exit(1);
if (!existsSync('tests/voice/corpus/rendered/clips.json')) {
  console.error('There is nothing to hear yet. Run "npm run voice:corpus" first.');
  process.exit(1);
}
const into = after('--into');
if (args.includes('--enrolled')) {
  const { enrolled, enrolledReport } = await load('/tests/voice/bench/enrolled.ts');
  const report = enrolledReport(await enrolled(set, Number(after('--every') ?? 3)));
  console.log(report);
  if (set === 'test') await keep('tests/voice/enrolled.md', report);
} else if (args.includes('--curve')) {
  const { curve } = await load('/tests/voice/bench/curve.ts');
  const report = await curve(Number(after('--every') ?? 2));
  console.log(report);
  await keep('tests/voice/thresholds.md', report, CURVE_HEAD);
} else if (args.includes('--numbers')) {
  const { numbersMeasured } = await load('/tests/voice/bench/measured.ts');
  const { NUMBERS, numbersTold } = await load('/tests/voice/bench/results.ts');
  const report = numbersTold(await numbersMeasured(set, Number(after('--every') ?? 3)));
  console.log(report);
  const [before, later = ''] = readFileSync('tests/voice/results.md', 'utf8').split(NUMBERS);
  const rest = later.slice(later.indexOf('\n## '));
  if (set === 'test')
    await keep('tests/voice/results.md', `${report}\n\nHeard ${byWhat()}.\n${rest}`, before);
} else if (into) writeFileSync(into, JSON.stringify(await part(Number(after('--part')))));
else {
  const { together } = await load('/tests/voice/bench/measured.ts');
  const { results } = await load('/tests/voice/bench/results.ts');
  const report = results(together(await allParts()), set);
  console.log(report);
  if (set === 'test') await keep('tests/voice/results.md', report);
}
