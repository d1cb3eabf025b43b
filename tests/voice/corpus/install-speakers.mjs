import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { run } from '../../tools/run.mjs';

const PROGRAMS = ['flite', 'text2wave', 'espeak-ng', 'pico2wave', 'mbrola', 'sox'];
const PACKAGES = [
  ...['flite', 'festival', 'festvox-kallpc16k', 'festvox-kdlpc16k', 'festvox-us-slt-hts', 'espeak-ng', 'sox'],
  ...['libttspico-utils', 'mbrola', 'fortunes', 'fortunes-min', 'wordnet-base'],
  ...['us1', 'us2', 'us3', 'en1', 'de6', 'nl2', 'fr4', 'sw1'].map((voice) => `mbrola-${voice}`),
];

const isThere = async () =>
  (await Promise.all(PROGRAMS.map((program) => run('which', [program], { quiet: true })))).every(
    ({ ok }) => ok,
  ) && (await run('dpkg', ['-s', ...PACKAGES], { quiet: true })).ok;

/** Where this Debian fetches from, with the parts of it that are not free beside the main one. */
async function allParts() {
  const format = ['--format', '$(REPO_URI) $(CODENAME)', 'Created-By: Packages', 'Component: main'];
  const { output } = await run('apt-get', ['indextargets', ...format, 'Label: Debian'], { quiet: true });
  const lines = output
    .trim()
    .split('\n')
    .filter((line) => !/-(updates|security|backports)/.test(line));
  return lines.map((line) => `deb ${line} main contrib non-free\n`).join('');
}

/**
 * Installs what speaks, with Debian's own tool. Some voices are in its non-free part, which is asked for this once and
 * leaves the machine's sources as they are; they speak for our measurements alone and nothing of them is handed on.
 */
export async function installSpeakers() {
  if (await isThere()) return true;
  console.log("Installing Debian's speech synthesisers …");
  const folder = mkdtempSync(join(tmpdir(), 'speakers-'));
  const list = join(folder, 'sources.list');
  const lists = join(folder, 'lists');
  const parts = join(folder, 'parts');
  mkdirSync(join(lists, 'partial'), { recursive: true });
  mkdirSync(parts);
  writeFileSync(list, await allParts());
  const args = [
    `Dir::Etc::sourcelist=${list}`,
    `Dir::Etc::sourceparts=${parts}`,
    `Dir::State::lists=${lists}`,
  ]
    .concat('Dir::Cache::pkgcache=', 'Dir::Cache::srcpkgcache=', 'DPkg::Lock::Timeout=300')
    .flatMap((option) => ['-o', option]);
  await run('apt-get', [...args, 'update', '-q'], { quiet: true });
  const { ok, output } = await run('apt-get', [...args, 'install', '-y', '-q', ...PACKAGES], { quiet: true });
  rmSync(folder, { recursive: true });
  if (!ok)
    console.error(`${output}\nThe corpus needs a Debian, and root: the speakers could not be installed.`);
  return ok;
}
