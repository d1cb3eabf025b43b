import { describe, expect, test } from 'vitest';
import type { KitSheet } from '../../src/procedure/kit-sheet';
import { builtInSheets } from '../../src/procedure/kits';
import type { Place } from '../../src/procedure/phase';
import { Maker } from '../story/maker';
import { anythingBroken } from '../story/seals';
import { explore, type Depth, type Explored, type Sampling } from './explore';

/** A busy machine is no failure. */
const PATIENCE = 14_400_000;

const told = (stories: readonly string[]): string[] => stories.slice(0, 3);
const number = (count: number): string => count.toLocaleString('en');

function tell(title: string, found: Explored, seconds: number): void {
  const { states, transitions, followed, compared } = found;
  console.info(
    `${title}: ${number(states)} states, ${number(transitions)} transitions, ${number(followed)} followed to the end, ` +
      `${number(compared)} compared, ${seconds.toFixed(0)} s`,
  );
}

/** Searches every way from one place to another, for each of some sheets, and asks that none is unsafe and none a dead end. */
export function everyWayThrough(
  name: string,
  [from, goal]: readonly [from: Place, goal: Place],
  depth: Depth,
  sampling: Sampling,
  reaches: readonly Place[],
  sheets: readonly KitSheet[] = builtInSheets,
): void {
  describe.each(sheets)(`every way through $name, from ${from} to ${goal}, ${name}`, (sheet) => {
    test(
      'enters no sealed act while its verdict is shut, and can always go on',
      { timeout: PATIENCE },
      () => {
        const began = performance.now();
        const found = explore({ start: new Maker(sheet).goTo(from), goal, depth, sampling }, anythingBroken);
        tell(`${sheet.name}, ${name}`, found, (performance.now() - began) / 1000);
        const { broken, stuck, lost, unlike } = found;
        expect({
          broken: told(broken),
          stuck: told(stuck),
          lost: told(lost),
          unlike: told(unlike),
        }).toEqual({ broken: [], stuck: [], lost: [], unlike: [] });
        expect(Object.keys(found.places)).toEqual(expect.arrayContaining([...reaches]));
      },
    );
  });
}
