import './node-version.mjs';
import { join } from 'node:path';
import { installPackages } from './install.mjs';
import { ROOT, runModule } from './run.mjs';
import { serve } from './serve.mjs';

/** Fixed: the batches in a browser belong to the address they were made at. */
const PORT = 4173;

/** The port comes first: to build while another window serves would pull the files from under it. */
async function takePort() {
  try {
    await serve(join(ROOT, 'dist'), PORT);
  } catch (error) {
    if (/** @type {NodeJS.ErrnoException} */ (error).code !== 'EADDRINUSE') throw error;
    console.error(
      `Port ${PORT} is taken: another program, or Fallbright in another window, uses it. Stop that one and try again.`,
    );
    process.exit(1);
  }
}

await takePort();
if (!(await installPackages())) process.exit(1);
console.log('Building …');
const { ok, output } = await runModule('vite/bin/vite.js', ['build'], { quiet: true });
if (!ok) {
  console.error(`${output}\nThe build failed.`);
  process.exit(1);
}
console.log(`\nFallbright is ready: http://localhost:${PORT}/\nStop it with Ctrl+C.`);
