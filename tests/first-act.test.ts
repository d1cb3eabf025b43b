import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path/posix';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';

/** Where the way to the first act begins: what `main.ts` and the routes fetch for it. */
const ROOTS = [
  'src/app/main.ts',
  'src/app/StartRoute.svelte',
  'src/app/BatchRoute.svelte',
  'src/app/hands-free.browser.ts',
  'src/workflow/journal.ts',
  'src/text/en-bench.ts',
];

const ENDINGS = ['', '.ts', '.svelte', '/index.ts', '.svelte.ts'];
const fileOf = (path: string) =>
  ENDINGS.map((ending) => path + ending).find((each) => /\.\w+$/.test(each) && existsSync(each));

/** What a file takes in as it is loaded: neither types alone, nor what it fetches later. */
function takenIn(path: string): string[] {
  const text = readFileSync(path, 'utf8');
  const script = path.endsWith('.svelte') ? (/<script\b[^>]*>(.*?)<\/script>/s.exec(text)?.[1] ?? '') : text;
  return ts
    .createSourceFile(path, script, ts.ScriptTarget.Latest)
    .statements.filter((each) => ts.isImportDeclaration(each))
    .filter(({ importClause }) => importClause?.phaseModifier !== ts.SyntaxKind.TypeKeyword)
    .map(({ moduleSpecifier }) => (moduleSpecifier as ts.StringLiteral).text)
    .filter((specifier) => specifier.startsWith('.'))
    .flatMap((specifier) => fileOf(join(dirname(path), specifier)) ?? []);
}

/** Every file that is loaded with these. */
function loadedWith(roots: readonly string[]): Set<string> {
  const loaded = new Set(roots);
  for (const path of loaded) for (const each of takenIn(path)) loaded.add(each);
  return loaded;
}

const first = loadedWith(ROOTS);
const rest = loadedWith(['src/ui/bench/later-parts.ts', 'src/text/en.ts']);
/** Whether it reads `whole` of a bench, on the spot or taken apart. */
const needsTheRest = (path: string) =>
  /\bbench\.whole\b|\{[^{}]*\bwhole\b[^{}]*\}(: Bench\b| = \$derived\(bench\))/.test(
    readFileSync(path, 'utf8'),
  );

describe('until the first act of a batch', () => {
  test('nothing is fetched that only the rest of the bench shows or says', () =>
    expect(
      [...first].filter((path) => path === 'src/ui/bench/later-parts.ts' || path === 'src/text/en.ts'),
    ).toEqual([]));

  test('nothing stands that reads words which may not have come', () =>
    expect([...first].filter(needsTheRest)).toEqual([]));

  test('what judges and leads is there: machine, verdicts, gates and guide do not wait for the rest', () => {
    const late = [...rest].filter((path) => !first.has(path));
    expect(late.filter((path) => /^src\/(workflow|guide)\//.test(path))).toEqual([]);
    expect(first).toContain('src/procedure/judge.ts');
    expect(first).toContain('src/workflow/batch-machine.ts');
  });

  test('is seen whole by these tests', () => {
    expect([...rest].filter(needsTheRest).length).toBeGreaterThan(10);
    expect(first).toContain('src/ui/cards/AccountCard.svelte');
    expect(rest).toContain('src/ui/bench/GatePage.svelte');
  });
});
