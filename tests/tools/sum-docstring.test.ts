import { RuleTester } from 'eslint';
import ts from 'typescript-eslint';
import { describe, test } from 'vitest';
import { sumDocstring } from './sum-docstring.mjs';

RuleTester.describe = describe;
RuleTester.it = test;

const sums = [{ sums: true }];
const lacks = (what: string) => [{ messageId: 'missing', data: { what } }];
const lines = (...given: string[]) =>
  `/**\n * Mass of sugar.\n${given.map((line) => ` * ${line}\n`).join('')} */\n`;
const complete = lines('Units   g/L in, g out.', 'Range   0–300.', 'Errors  none.', 'Source  stoichiometry.');
const sum = 'export function sugar(rise: number): number { return rise; }';

new RuleTester({ languageOptions: { parser: ts.parser } }).run(
  'what is written above an export of domain/',
  sumDocstring,
  {
    valid: [
      { name: 'a sum with all four lines', code: complete + sum, options: sums },
      {
        name: 'a table of a sum, with what it is',
        code: '/** By mass. */ export const TABLE = [1];',
        options: sums,
      },
      { name: 'a function elsewhere, with a sentence', code: `/** Sugar. */ ${sum}` },
      { name: 'a type elsewhere', code: "export type Closure = 'cork' | 'screw cap';" },
      { name: 'what is not exported', code: 'const sugar = () => 1;', options: sums },
    ],
    invalid: [
      { name: 'a sum with nothing', code: sum, options: sums, errors: lacks('a docstring') },
      { name: 'a function elsewhere with nothing', code: sum, errors: lacks('a docstring') },
      {
        name: 'a table of a sum with nothing',
        code: 'export const TABLE = [1];',
        options: sums,
        errors: lacks('a docstring'),
      },
      { name: 'a plain comment', code: `// Sugar.\n${sum}`, errors: lacks('a docstring') },
      {
        name: 'a sum without its range and source',
        code: lines('Units  g', 'Errors  none') + sum,
        options: sums,
        errors: lacks('Range, Source'),
      },
      {
        name: 'lines left empty',
        code: lines('Units', 'Range', 'Errors', 'Source') + sum,
        options: sums,
        errors: lacks('Units, Range, Errors, Source'),
      },
      {
        name: 'a sum written as an arrow',
        code: '/** Sugar. */ export const sugar = (rise: number) => rise;',
        options: sums,
        errors: lacks('Units, Range, Errors, Source'),
      },
    ],
  },
);
