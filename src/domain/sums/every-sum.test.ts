import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const folder = new URL('.', import.meta.url);
const sums = readdirSync(folder).filter((name) => name.endsWith('.ts') && !name.endsWith('.test.ts'));
const exportOf = (name: string) =>
  name.replace(/\.ts$/, '').replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase());

describe.each(sums)('%s', (name) => {
  const source = readFileSync(new URL(name, folder), 'utf8');
  const [, docstring = ''] =
    new RegExp(`/\\*\\*((?:(?!\\*/)[^])*)\\*/\\nexport function ${exportOf(name)}\\(`).exec(source) ?? [];

  test.each(['Units', 'Range', 'Uncertainty', 'Errors', 'Source'])('says its %s', (line) => {
    expect(docstring).toMatch(new RegExp(`^ \\* ${line} +\\S`, 'm'));
  });

  test('exports one function, named as the file is', () => {
    expect([...source.matchAll(/^export (?:function|const) (\w+)/gm)].map(([, given]) => given)).toEqual([
      exportOf(name),
    ]);
  });

  test('is no longer than a screen', () => {
    expect(source.split('\n').length).toBeLessThan(200);
  });
});

test('there are sums', () => expect(sums.length).toBeGreaterThan(25));
