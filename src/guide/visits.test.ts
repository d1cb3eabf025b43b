import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { everyVisit, type Visit } from '../../tests/story/every-visit';
import { builtInSheets } from '../procedure/kits';

/** The plays are written down by hand or by `REWRITE_PLAYS=1`, and then read: they are what the maker hears. */
const REWRITE = process.env['REWRITE_PLAYS'] === '1';
const HEADING = /^=== (.*)$/m;

const fileOf = (id: string): string => `tests/plays/${id}.txt`;

function written(id: string): Visit[] {
  const [, ...parts] = readFileSync(fileOf(id), 'utf8').split(HEADING);
  return Array.from({ length: parts.length / 2 }, (_, index) => ({
    title: parts[index * 2] ?? '',
    script: (parts[index * 2 + 1] ?? '').trim().split('\n'),
  }));
}

function write(id: string, visits: readonly Visit[]): void {
  mkdirSync('tests/plays', { recursive: true });
  writeFileSync(
    fileOf(id),
    visits.map(({ title, script }) => `=== ${title}\n${script.join('\n')}\n`).join('\n'),
  );
}

describe.each(builtInSheets)('a whole batch of $name, by ear', async ({ id, ...sheet }) => {
  const played = await everyVisit({ id, ...sheet });
  if (REWRITE) write(id, played);
  const plays = written(id);

  test('comes to its end in as many visits', () =>
    expect(played.map(({ title }) => title)).toEqual(plays.map(({ title }) => title)));

  test.each(plays)('$title', ({ title, script }) =>
    expect(played.find((visit) => visit.title === title)?.script).toEqual(script),
  );

  test('has the last bottle tasted and looked at', () =>
    expect(played.at(-1)?.script.at(-1)).toMatch(/Guide: Finished\./));
});
