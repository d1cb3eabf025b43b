import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT, run } from './run.mjs';

/** @typedef {Record<string, { version?: string, optional?: boolean, devOptional?: boolean }>} Packages */

/**
 * @param {string} file
 * @returns {Packages | undefined}
 */
function packagesIn(file) {
  try {
    return JSON.parse(readFileSync(join(ROOT, file), 'utf8')).packages;
  } catch {
    return undefined;
  }
}

/**
 * Whether what npm says it installed is what the lock asks for. Optional packages may be absent (other platforms).
 * @param {Packages} wanted
 * @param {Packages | undefined} installed
 */
export function isInstalled(wanted, installed) {
  return Object.entries(wanted).every(([path, { version, optional, devOptional }]) => {
    if (path === '') return true;
    const found = installed?.[path];
    return found ? found.version === version : installed && (optional || devOptional);
  });
}

/** Installs the packages of the lock, unless they are there already. Answers whether they are there now. */
export async function installPackages() {
  const installed = packagesIn('node_modules/.package-lock.json');
  const isWhole = Object.keys(installed ?? {}).every((path) => existsSync(join(ROOT, path)));
  if (isWhole && isInstalled(packagesIn('package-lock.json') ?? {}, installed)) return true;
  console.log('Installing the packages of package-lock.json …');
  const { ok } = await run('npm', ['ci', '--include=dev', '--no-audit', '--no-fund', '--loglevel=error']);
  if (!ok)
    console.error(
      'The packages could not be installed: is the network up? Then try again, or run "npm ci" to see why.',
    );
  return ok;
}
