import { AssertionError } from 'node:assert';

/**
 * As much of vitest as the gates' specs use, so that they run a thousand times in one process. That it agrees with the
 * real one is seen in that every spec passes with no mutant awake.
 * @typedef {{ name: string, run: () => unknown }} Case
 */

/** @type {Case[]} */
export let cases = [];
export const forget = () => {
  cases = [];
};

/** @type {string[]} */
const within = [];
/** @type {(() => unknown)[]} */
let before = [];

/** @param {string} name @param {unknown[]} rest */
export function test(name, ...rest) {
  const run = /** @type {() => unknown} */ (rest.find((each) => typeof each === 'function'));
  const first = [...before];
  cases.push({
    name: [...within, name].join(' › '),
    run: async () => {
      for (const each of first) await each();
      await run();
    },
  });
}

/** @param {string} name @param {() => void} body */
export function describe(name, body) {
  const outer = before;
  before = [...before];
  within.push(name);
  body();
  within.pop();
  before = outer;
}

/** @param {() => unknown} run */
export function beforeEach(run) {
  before.push(run);
}

/** @param {() => unknown} run */
export function beforeAll(run) {
  before.push(run);
}

/** @param {(name: string, ...rest: any[]) => void} one */
const each =
  (one) =>
  (/** @type {readonly any[]} */ table) =>
  (/** @type {string} */ name, /** @type {any[]} */ ...rest) => {
    const run = rest.find((each) => typeof each === 'function');
    table.forEach((row, index) => {
      const given = Array.isArray(row) ? row : [row];
      const shown = name.replace(
        /%s|\$\w+/,
        typeof given[0] === 'object' ? `${index + 1}` : String(given[0]),
      );
      one(shown, () => run(...given));
    });
  };
test.each = each(test);
describe.each = each(describe);

/** A wanted value that says for itself what matches it. */
class Asymmetric {
  /** @param {(given: any) => boolean} rule */
  constructor(rule) {
    this.rule = rule;
  }

  /** @param {unknown} given */
  matches(given) {
    return this.rule(given);
  }
}

/** @param {any} given @param {any} wanted @param {boolean} [loosely] more keys than wanted are allowed @returns {boolean} */
function same(given, wanted, loosely = false) {
  if (wanted instanceof Asymmetric) return wanted.matches(given);
  if (Object.is(given, wanted)) return true;
  if (typeof given !== 'object' || typeof wanted !== 'object' || !given || !wanted) return false;
  if (Array.isArray(given) !== Array.isArray(wanted)) return false;
  if (Array.isArray(wanted))
    return given.length === wanted.length && wanted.every((each, at) => same(given[at], each, loosely));
  if (given instanceof Set && wanted instanceof Set)
    return given.size === wanted.size && [...wanted].every((each) => given.has(each));
  const keys = new Set([...(loosely ? [] : Object.keys(given)), ...Object.keys(wanted)]);
  return [...keys].every((key) => same(given[key], wanted[key], loosely));
}

/** @type {Record<string, (given: any, ...wanted: any[]) => boolean>} */
const MATCHERS = {
  toBe: Object.is,
  toEqual: (given, wanted) => same(given, wanted),
  toStrictEqual: (given, wanted) => same(given, wanted),
  toMatchObject: (given, wanted) => same(given, wanted, true),
  toContain: (given, wanted) =>
    [...given].includes(wanted) || (typeof given === 'string' && given.includes(wanted)),
  toHaveLength: (given, wanted) => given.length === wanted,
  toBeUndefined: (given) => given === undefined,
  toBeDefined: (given) => given !== undefined,
  toBeCloseTo: (given, wanted, digits = 2) => Math.abs(given - wanted) < 10 ** -digits / 2,
  toBeGreaterThan: (given, wanted) => given > wanted,
  toBeGreaterThanOrEqual: (given, wanted) => given >= wanted,
  toBeLessThan: (given, wanted) => given < wanted,
  toBeLessThanOrEqual: (given, wanted) => given <= wanted,
};

/** @param {unknown} given */
export function expect(given) {
  /** @param {boolean} turned */
  const matchers = (turned) =>
    Object.fromEntries(
      Object.entries(MATCHERS).map(([name, matches]) => [
        name,
        (/** @type {unknown[]} */ ...wanted) => {
          if (matches(given, ...wanted) === turned) throw new AssertionError({ message: name });
        },
      ]),
    );
  return { ...matchers(false), not: matchers(true) };
}
expect.objectContaining = (/** @type {object} */ wanted) =>
  new Asymmetric((given) => same(given, wanted, true));
expect.arrayContaining = (/** @type {unknown[]} */ wanted) =>
  new Asymmetric(
    (given) => Array.isArray(given) && wanted.every((each) => given.some((one) => same(one, each))),
  );
expect.stringContaining = (/** @type {string} */ part) =>
  new Asymmetric((given) => String(given).includes(part));
