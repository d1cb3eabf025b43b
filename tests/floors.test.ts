import { readdirSync, readFileSync } from 'node:fs';
import { basename, dirname, join, relative } from 'node:path/posix';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';

const FLOORS: Record<string, number> = {
  domain: 0,
  procedure: 1,
  workflow: 2,
  voice: 3,
  timers: 3,
  storage: 3,
  text: 4,
  guide: 5,
  ui: 6,
  app: 7,
};
const MAY_HAVE_A_BARREL = /^src\/(procedure(\/kits)?|text(\/[a-z]{2,3})?)$/;
const LONGEST = 200;

type File = { path: string; room: string; text: string };
type Import = { from: File; to: string; room: string };

const isCode = (path: string) => /\.(ts|svelte)$/.test(path);
const isData = ({ room, path }: File) => room === 'text' || path.endsWith('.json');
const isTest = (path: string) => path.endsWith('.test.ts');
const isAdapter = (path: string) => /\.browser(\.ts)?$/.test(path);
const roomOf = (path: string) => path.split('/')[1] ?? '';

const files: readonly File[] = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .map((path) => join('src', path.replaceAll('\\', '/')))
  .filter((path) => /\.\w+$/.test(basename(path)))
  .map((path) => ({ path, room: roomOf(path), text: readFileSync(path, 'utf8') }));

/** What a module takes in: imports of every kind, re-exports, globs, and workers named by `new URL(…)`. */
function specifiersIn({ path, text }: File): string[] {
  const scripts = path.endsWith('.svelte')
    ? [...text.matchAll(/<script\b[^>]*>(.*?)<\/script>/gs)].map(([, script = '']) => script).join('\n')
    : text;
  const urls = [...scripts.matchAll(/(?:import\.meta\.glob\(|new URL\()\s*['"]([^'"]+)['"]/g)].map(
    ([, url = '']) => url,
  );
  return [...ts.preProcessFile(scripts).importedFiles.map(({ fileName }) => fileName), ...urls];
}

const imports: readonly Import[] = files
  .filter(({ path }) => isCode(path))
  .flatMap((from) =>
    specifiersIn(from)
      .filter((specifier) => specifier.startsWith('.'))
      .map((specifier) => join(dirname(from.path), specifier))
      .map((to) => ({ from, to, room: roomOf(to) })),
  )
  .filter(({ to }) => to.startsWith('src/'));

const floorOf = (room: string) => FLOORS[room] ?? Number.NaN;
const tell = ({ from, to }: Import, why: string) => `${from.path} imports ${relative('src', to)}: ${why}`;

describe('the house', () => {
  test('has no room without a floor', () =>
    expect(files.filter(({ room }) => !(room in FLOORS)).map(({ path }) => path)).toEqual([]));

  test('imports go down, never up', () =>
    expect(
      imports
        .filter(({ from, room }) => floorOf(room) > floorOf(from.room))
        .map((up) =>
          tell(
            up,
            `${up.room}/ (floor ${floorOf(up.room)}) is above ${up.from.room}/ (floor ${floorOf(up.from.room)})`,
          ),
        ),
    ).toEqual([]));

  test('rooms on one floor never import each other', () =>
    expect(
      imports
        .filter(({ from, room }) => room !== from.room && floorOf(room) === floorOf(from.room))
        .map((sideways) => tell(sideways, `both are on floor ${floorOf(sideways.room)}`)),
    ).toEqual([]));

  test('only app/ names an adapter, apart from its own test', () =>
    expect(
      imports
        .filter(({ from, to }) => isAdapter(to) && from.room !== 'app' && !isTest(from.path))
        .map((named) => tell(named, 'take the port as an argument; app/ hands in the adapter')),
    ).toEqual([]));

  test('a screen of app/ takes the world from the ports: only main.ts and adapters name an adapter', () =>
    expect(
      imports
        .filter(({ from, to }) => isAdapter(to) && from.path.endsWith('.svelte'))
        .map((named) => tell(named, 'hand it in by Ports')),
    ).toEqual([]));

  test('has no barrels but the three agreed', () =>
    expect(
      files
        .filter(({ path }) => basename(path) === 'index.ts' && !MAY_HAVE_A_BARREL.test(dirname(path)))
        .map(({ path }) => `${path}: import each file by its own name`),
    ).toEqual([]));

  test(`has no file of more than ${LONGEST} lines, data apart`, () =>
    expect(
      files
        .filter((file) => !isData(file))
        .map(({ path, text }) => ({ path, lines: text.trimEnd().split('\n').length }))
        .filter(({ lines }) => lines > LONGEST)
        .map(({ path, lines }) => `${path}: ${lines} lines`),
    ).toEqual([]));

  test('is seen whole by these tests', () => {
    const rooms = new Set(files.map(({ room }) => room));
    expect([...rooms]).toEqual(expect.arrayContaining(['domain', 'app']));
    expect(
      imports.some(({ from, to }) => from.path === 'src/app/main.ts' && to === 'src/app/App.svelte'),
    ).toBe(true);
  });
});
