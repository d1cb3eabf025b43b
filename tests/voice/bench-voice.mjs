import '../tools/node-version.mjs';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { runnerImport } from 'vite';
import { installPackages } from '../tools/install.mjs';

/** Measures the ears on speakers that nothing was tuned on (or with `--tune` on the others). `--quick`: a fifth of it. */
const RESULTS = 'tests/voice/results.md';
const isQuick = process.argv.includes('--quick');
const set = process.argv.includes('--tune') ? 'tune' : 'test';
const size = isQuick ? { phrases: 10, prose: 10 } : { phrases: 2, prose: 1 };

if (!(await installPackages())) process.exit(1);
if (!existsSync('tests/voice/corpus/rendered/clips.json')) {
  console.error('There is nothing to hear yet. Run "npm run voice:corpus" first.');
  process.exit(1);
}
const { module } = await runnerImport('/tests/voice/bench/bench-voice.ts', {
  configFile: false,
  logLevel: 'error',
});
const report = await module.benchVoice(set, size, (/** @type {string} */ line) => console.log(line));
const { sha256 } = JSON.parse(readFileSync('src/voice/ear/engine/pack.json', 'utf8'));
const head = `# How well the ears hear

Synthetic voices only, of speakers that nothing was tuned on; no person was heard. Written by \`npm run bench:voice\` on
${new Date().toISOString().slice(0, 10)}, Node ${process.version}, ${cpus()[0]?.model ?? 'one processor'}, ear pack ${sha256.slice(0, 12)}.
`;
console.log(report);
if (set === 'test' && !isQuick) writeFileSync(RESULTS, `${head}\n${report}`);
