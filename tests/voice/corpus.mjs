import '../tools/node-version.mjs';
import { runnerImport } from 'vite';
import { installPackages } from '../tools/install.mjs';
import { installSpeakers } from './corpus/install-speakers.mjs';

/** Renders the speech that the ears are measured with, into a folder that git ignores. */
if (!(await installPackages()) || !(await installSpeakers())) process.exit(1);
const { module } = await runnerImport('/tests/voice/corpus/render-corpus.ts', {
  configFile: false,
  logLevel: 'error',
});
const clips = module.renderCorpus((/** @type {string} */ line) => console.log(line));
const hours =
  clips.reduce(
    (/** @type {number} */ sum, /** @type {{ seconds: number }} */ { seconds }) => sum + seconds,
    0,
  ) / 3600;
console.log(`${clips.length} clips, ${hours.toFixed(1)} hours, in tests/voice/corpus/rendered`);
