import { isEnd } from '../../src/procedure/phase';
import type { Maker } from '../story/maker';
import { movesAt } from './moves';
import { stateKey } from './state-key';

/** What a search found: how much it saw, and the story of every state that broke a rule. */
export type Explored = {
  states: number;
  transitions: number;
  places: ReadonlySet<string>;
  stuck: string[];
  broken: string[];
};

type Node = { maker: Maker; story: string[]; corrections: number };

/** How far to look: corrections on one path, and whether every reading that there is comes after every wait. */
export type Depth = { corrections: number; thorough: boolean };

export type Rule = (maker: Maker) => string | undefined;

/**
 * Breadth first through every state that the moves reach from a start, each abstract state visited once, with at most so
 * many corrections a path. `rule` is asked at each. A state without any way on is stuck.
 */
export function explore(
  start: Maker,
  { corrections: mostCorrections, thorough }: Depth,
  rule: Rule,
): Explored {
  const seen = new Set<string>();
  const found = {
    states: 0,
    transitions: 0,
    places: new Set<string>(),
    stuck: [] as string[],
    broken: [] as string[],
  };
  let frontier: Node[] = [{ maker: start, story: [], corrections: 0 }];
  while (frontier.length > 0) {
    const next: Node[] = [];
    for (const node of frontier) {
      found.states += 1;
      found.places.add(node.maker.place);
      const broken = rule(node.maker);
      if (broken) found.broken.push(`${broken}: ${node.story.join('; ')}`);
      const after = isEnd(node.maker.place) ? [] : stepsFrom(node, mostCorrections, thorough);
      found.transitions += after.length;
      if (after.length === 0 && !isEnd(node.maker.place))
        found.stuck.push(`${node.maker.place}: ${node.story.join('; ')}`);
      for (const each of after) {
        const key = `${String(each.corrections)} ${stateKey(each.maker, each.corrections < mostCorrections)}`;
        if (seen.has(key)) continue;
        seen.add(key);
        next.push(each);
      }
    }
    frontier = next;
  }
  return found;
}

/** Every move that the batch takes, with where it leads. */
function stepsFrom({ maker, story, corrections }: Node, mostCorrections: number, thorough: boolean): Node[] {
  return movesAt(maker, thorough)
    .filter(({ corrects }) => !corrects || corrections < mostCorrections)
    .flatMap((move) => {
      const after = maker.fork();
      after.wait(move.hours);
      move.deed(after);
      return after.facts === maker.facts
        ? []
        : [
            {
              maker: after,
              story: [...story, move.name],
              corrections: corrections + (move.corrects ? 1 : 0),
            },
          ];
    });
}
