import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';

export const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const IS_WINDOWS = process.platform === 'win32';

/** @type {Set<import('node:child_process').ChildProcess>} */
const running = new Set();

/**
 * Ends a child and whatever it started: each child leads a process group of its own.
 * @param {import('node:child_process').ChildProcess} child
 * @param {'SIGTERM' | 'SIGKILL'} [signal]
 */
function end(child, signal = 'SIGTERM') {
  try {
    if (child.pid && !IS_WINDOWS) process.kill(-child.pid, signal);
    else child.kill(signal);
  } catch {
    // It has ended by itself meanwhile.
  }
}

/**
 * Ends everything: asks first, and after two seconds (npm rolls back for longer than that) does not ask.
 * @param {number} code
 */
function stop(code) {
  process.once('exit', () => running.forEach((child) => end(child, 'SIGKILL')));
  if (running.size === 0) process.exit(code);
  running.forEach((child) => {
    child.once('close', () => process.exit(code));
    end(child);
  });
  setTimeout(() => process.exit(code), 2000);
}

process.on('SIGINT', () => stop(130));
process.on('SIGTERM', () => stop(143));
process.on('SIGHUP', () => stop(129));

/** A signal to npm ends npm and its shell, and no more: what npm started has to notice by itself. */
const parent = process.ppid;
if (process.env['npm_lifecycle_event']) {
  const watch = setInterval(() => {
    if (process.ppid === parent) return;
    clearInterval(watch);
    stop(143);
  }, 500).unref();
}

/**
 * Runs a program in the project's root, without input, and waits for it.
 * @param {string} program
 * @param {readonly string[]} args
 * @param {{ quiet?: boolean, minutes?: number, env?: NodeJS.ProcessEnv }} [options] quiet: keep the output instead of showing it
 * @returns {Promise<{ ok: boolean, output: string, seconds: number }>}
 */
export function run(program, args, { quiet = false, minutes = 10, env = {} } = {}) {
  return new Promise((resolve) => {
    const began = performance.now();
    const child = spawn(program, args, {
      cwd: ROOT,
      stdio: ['ignore', quiet ? 'pipe' : 'inherit', quiet ? 'pipe' : 'inherit'],
      env: { ...process.env, ...env },
      detached: !IS_WINDOWS,
      shell: IS_WINDOWS && program === 'npm',
    });
    running.add(child);
    let output = '';
    const late = setTimeout(() => {
      output += `Stopped: it took longer than ${minutes} minutes.\n`;
      if (!quiet) console.error(output);
      end(child);
    }, minutes * 60_000);
    const finish = (/** @type {boolean} */ ok) => {
      clearTimeout(late);
      running.delete(child);
      resolve({ ok, output, seconds: (performance.now() - began) / 1000 });
    };
    child.stdout?.on('data', (data) => (output += data));
    child.stderr?.on('data', (data) => (output += data));
    child.on('error', (error) => {
      output += error.message;
      finish(false);
    });
    child.on('close', (code) => finish(code === 0));
  });
}

/**
 * Runs the script of an installed package, by its path: the links of node_modules/.bin leave orphans when ended.
 * @param {string} script
 * @param {readonly string[]} args
 * @param {Parameters<typeof run>[2]} [options]
 */
export const runModule = (script, args, options) =>
  run(process.execPath, [`node_modules/${script}`, ...args], options);
