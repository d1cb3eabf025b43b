import type { SheetFault, SheetRule } from '../../domain/problem';
import { quoted } from './counted';

const KINDS: Partial<Record<string, string>> = {
  string: 'text in quotation marks',
  number: 'a number',
  boolean: 'true or false',
  Array: 'a list in square brackets',
  Object: 'a group in curly brackets',
};

/** Text and lists are given as they stand in the file; only their quotation marks are ours. */
export const asPlain = (given: string): string => given.replace(/^"(.*)"$/s, '$1');

/** `("cork" | "screw cap")` as “cork” or “screw cap”. */
const choices = (allowed: string): string =>
  allowed
    .replace(/^\((.*)\)$/s, '$1')
    .split(' | ')
    .map(asPlain)
    .map(quoted)
    .join(' or ');

const kind = (allowed: string): string => {
  if (allowed.startsWith('function')) return 'a whole number';
  return KINDS[allowed] ?? `of the form ${allowed}`;
};

/** A bound alone does not say which end it is; what was given does. Nothing has a lower bound of length but one. */
function bound(given: string, allowed: string): string {
  if (given === '' || given === '[]') return 'It must not be empty.';
  if (!/^\d/.test(allowed)) return `It must be ${allowed}.`;
  if (Number.isNaN(Number(given)))
    return `It is too long: at most ${allowed} ${given.startsWith('[') ? 'entries' : 'characters'} may stand here.`;
  return `It must be ${Number(given) < Number(allowed) ? 'at least' : 'at most'} ${allowed}.`;
}

type Fault = { given: string; allowed: string };

const RULES: Record<SheetRule, (fault: Fault) => string> = {
  'wrong-kind': ({ allowed }) => (allowed ? `It must be ${kind(allowed)}.` : 'It is not of the right kind.'),
  missing: () => 'It must be there: add it.',
  'unknown-key': () => 'There is no such field: check its spelling, or take it out.',
  outside: ({ given, allowed }) => bound(given, allowed),
  'not-one-of': ({ allowed }) =>
    allowed ? `It must be ${choices(allowed)}.` : 'It is not one of those that may stand here.',
  twice: () => 'It is there twice: keep one, or name them apart.',
  'may-not-go-there': ({ allowed }) =>
    allowed
      ? `What it holds may go in only at: ${allowed}.`
      : 'What it holds never goes in together: check its contents.',
  'lowest-above-highest': ({ allowed }) =>
    `It is above the highest value, ${allowed}: put the lower one first.`,
  'no-yeast': () => 'No sachet holds yeast: add the one that does.',
  'sweetens-without-sorbate': () =>
    'Sugar without sorbate would ferment in the bottle: add the sorbate, or leave the sweetening out.',
  'sorbate-without-sulphite': () =>
    'Sorbate without sulphite can turn to a smell of geraniums: put sulphite beside it, at stabilise.',
  'too-much-sorbate': ({ allowed }) =>
    `That is more sorbic acid than any wine may hold; the most is ${allowed}: weigh the sachet, and check the grams.`,
  'too-much-sulphite': ({ allowed }) =>
    `That is more sulphur dioxide than a kit may add; the most is ${allowed}: weigh the sachet, and check the grams.`,
  'order-twice': () => 'Two sachets of the same phase have this place in the order: give each its own.',
  'reserve-too-large': ({ allowed }) =>
    `The reserve is more than a quarter of the batch: draw at most ${allowed} litres.`,
  'clear-move-without-vessel': () =>
    'Clear wine is to be moved, but there is no vessel to move it to: add one, or take out the move.',
  'unknown-act': () =>
    'A note hangs on a step that the guide does not have: use the name of one that it has.',
};

/** Faults of the place itself: there is no value to show. */
const NOTHING_STANDS: readonly SheetRule[] = ['missing', 'unknown-key'];

/** One line for each fault: where it is, what stands there, and what may. */
export const faultLines = (faults: readonly SheetFault[]): string[] =>
  faults.map(({ path, given, rule, allowed = '' }) => {
    const plain = asPlain(given);
    const stands = NOTHING_STANDS.includes(rule) || plain === '' ? '' : ` (${quoted(plain)})`;
    return `${path || 'The sheet itself'}${stands}: ${RULES[rule]({ given: plain, allowed })}`;
  });
