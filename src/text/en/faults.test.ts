import { expect, test } from 'vitest';
import { everyFault } from '../../../tests/story/every-problem';
import type { SheetFault } from '../../domain/problem';
import hedgeLantern from '../../procedure/kits/hedge-lantern.json';
import { parseKitSheet } from '../../procedure/parse-kit-sheet';
import { faultLines } from './faults';

test('every rule has a line: where, what stands there, what may, and a full stop', () =>
  expect(
    faultLines(Object.values(everyFault)).filter((line) => !/^[\w. ]+(?: \(“.+”\))?: .+\.$/.test(line)),
  ).toEqual([]));

test.each<[SheetFault, string]>([
  [everyFault['wrong-kind'], 'batchLitres (“23”): It must be a number.'],
  [everyFault['not-one-of'], 'bottle.closure (“bung”): It must be “cork” or “screw cap”.'],
  [everyFault['may-not-go-there'], 'sachets.3.when (“mix”): What it holds may go in only at: stabilise.'],
  [
    { ...everyFault['may-not-go-there'], allowed: '' },
    'sachets.3.when (“mix”): What it holds never goes in together: check its contents.',
  ],
  [
    { path: '', given: '[]', rule: 'wrong-kind', allowed: 'Object' },
    'The sheet itself (“[]”): It must be a group in curly brackets.',
  ],
])('one line: %o', (fault, line) => expect(faultLines([fault])).toEqual([line]));

const linesFor = (changed: object): string[] => {
  const parsed = parseKitSheet({ ...hedgeLantern, ...changed });
  return parsed.ok || parsed.problem.code !== 'sheet-refused' ? [] : faultLines(parsed.problem.faults);
};
const [bentonite, yeast, ...others] = hedgeLantern.sachets;

test.each<[string, object, string[]]>([
  ['too large a batch', { batchLitres: 90 }, ['batchLitres (“90”): It must be at most 60.']],
  ['too small a batch', { batchLitres: 1 }, ['batchLitres (“1”): It must be at least 3.']],
  ['no name', { name: undefined }, ['name: It must be there: add it.']],
  ['an empty name', { name: ' ' }, ['name: It must not be empty.']],
  [
    'a field of its own',
    { vintage: 2030 },
    ['vintage: There is no such field: check its spelling, or take it out.'],
  ],
  [
    'half a second of stirring',
    { sachets: [{ ...bentonite, stirSeconds: 90.5 }, yeast, ...others] },
    ['sachets.0.stirSeconds (“90.5”): It must be a whole number.'],
  ],
  [
    'sorbate on mixing day',
    { sachets: [bentonite, yeast, others[0], { ...others[1], when: 'mix' }, ...others.slice(2)] },
    ['sachets.3.when (“mix”): What it holds may go in only at: stabilise.'],
  ],
  [
    'a range upside down',
    { start: { lowest: 1.072, highest: 1.062 } },
    ['start.lowest (“1.072”): It is above the highest value, 1.062: put the lower one first.'],
  ],
  [
    'a note on nothing',
    { notes: [{ step: 'dance', say: 'Now.' }] },
    [
      'notes.0.step (“dance”): A note hangs on a step that the guide does not have: use the name of one that it has.',
    ],
  ],
])('a real sheet with %s', (_, changed, lines) => expect(linesFor(changed)).toEqual(lines));
