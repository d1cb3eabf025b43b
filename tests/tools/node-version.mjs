import { readFileSync } from 'node:fs';

const { engines } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8'));
const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);

/**
 * Whether this Node is in a range such as "^20.19.0 || >=24". Only the two forms that package.json uses.
 * @param {string} range
 */
const isIn = (range) => {
  const [, sign, low, least] = /^(\^|>=)(\d+)(?:\.(\d+))?/.exec(range) ?? [];
  const isRightMajor = sign === '^' ? major === Number(low) : major > Number(low);
  return (major === Number(low) || isRightMajor) && (major > Number(low) || minor >= Number(least ?? 0));
};

if (!engines.node.split('||').some((/** @type {string} */ range) => isIn(range.trim()))) {
  console.error(
    `Fallbright needs Node ${engines.node}; this is ${process.version}. Install the current Node 20 or a later one.`,
  );
  process.exit(1);
}
