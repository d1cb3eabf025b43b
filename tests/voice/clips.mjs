import '../tools/node-version.mjs';
import { runnerImport } from 'vite';
import { installPackages } from '../tools/install.mjs';
import { installSpeakers } from './corpus/install-speakers.mjs';

/** Renders the phrases that browser tests speak, which are kept with them. */
if (!(await installPackages()) || !(await installSpeakers())) process.exit(1);
const { module } = await runnerImport('/tests/voice/corpus/render-clips.ts', {
  configFile: false,
  logLevel: 'error',
});
console.log(`${module.renderClips()} clips, in ${module.CLIPS}`);
