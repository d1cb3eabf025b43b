import { hash } from 'node:crypto';
import { isEnd } from '../../src/procedure/phase';
import { withoutStacks } from '../story/without-stacks';
import type { Maker } from '../story/maker';
import { movesAt, type Move } from './moves';
import { stateKey } from './state-key';
import { followSensibly } from './follow-sensibly';
import { waysOn } from './ways-on';

/**
 * How far to look: corrections and liberties (a clause overridden, a sachet left out) on one path, ways back, and whether
 * every reading that there is may come at the dryness gate, or those without which some clause would not be seen failing.
 */
export type Depth = { corrections: number; liberties: number; returns: number; thorough: boolean };

/** How often a state is followed to its end, and a state that looks like another compared with it: one in so many. */
export type Sampling = { followed: number; compared: number };

export type Search = { start: Maker; goal: string; depth: Depth; sampling: Sampling };

/** What is wrong where a batch stands; nothing when all is well. */
export type Rule = (maker: Maker) => string | undefined;

/** What a search found: how much it saw, and the story of every state that broke a rule. */
export type Explored = {
  states: number;
  transitions: number;
  places: Readonly<Record<string, number>>;
  /** A sealed act entered, or stayed in, while its verdict is shut. */
  broken: string[];
  /** No way to the goal without overriding, leaving out or ending: whatever the maker does from here. */
  stuck: string[];
  /** Sensible moves, one after another, did not come to the goal. */
  lost: string[];
  /** Two states that the search takes for one lead to different ones: then it has not looked everywhere. */
  unlike: string[];
  followed: number;
  compared: number;
};

type Spent = { corrections: number; liberties: number };
type Node = Spent & { id: number; maker: Maker };
type Step = Spent & { maker: Maker; key: string; move: Move };

/**
 * Breadth first through every state that the moves reach from a start, each abstract state once. `rule` is asked at each.
 * Every edge is kept, so that at the end it is known from which states the goal can be reached.
 */
class Exploration {
  readonly #ids = new Map<string, number>();
  readonly #from: number[] = [-1];
  readonly #by: string[] = ['begins'];
  readonly #edges: [from: number, to: number][] = [];
  readonly #goals: number[] = [];
  readonly #signatures: string[] = [];
  readonly #twins: { id: number; signature: string; story: string }[] = [];
  readonly #found = {
    states: 0,
    transitions: 0,
    places: {} as Record<string, number>,
    broken: [] as string[],
    lost: [] as string[],
    followed: 0,
    compared: 0,
  };

  constructor(
    readonly search: Search,
    readonly rule: Rule,
  ) {}

  run(): Explored {
    let frontier: Node[] = [{ id: 0, maker: this.search.start, corrections: 0, liberties: 0 }];
    while (frontier.length > 0) frontier = frontier.flatMap((node) => this.#visit(node));
    const leading = waysOn(this.#from.length, this.#edges, this.#goals);
    const stuck = this.#from.map((_, id) => id).filter((id) => !leading.has(id));
    const unlike = this.#twins.filter(({ id, signature }) => this.#signatures[id] !== signature);
    return {
      ...this.#found,
      stuck: stuck.map((id) => this.#story(id)),
      unlike: unlike.map(({ id, story }) => `${this.#story(id)}\n  is taken for\n${story}`),
    };
  }

  /** The states beyond one that were not seen before. */
  #visit(node: Node): Node[] {
    const { id, maker } = node;
    const found = this.#found;
    found.states += 1;
    found.places[maker.place] = (found.places[maker.place] ?? 0) + 1;
    const broken = this.rule(maker);
    if (broken) found.broken.push(`${broken}: ${this.#story(id)}`);
    if (this.#isGoal(maker)) this.#goals.push(id);
    if (this.#isGoal(maker) || isEnd(maker.place)) return [];
    this.#follow(node);
    const steps = this.#stepsFrom(node);
    found.transitions += steps.length;
    this.#signatures[id] = signatureOf(steps);
    return steps.flatMap((step) => this.#arrive(id, step));
  }

  #isGoal = ({ place }: Maker): boolean => place === this.search.goal;

  #arrive(from: number, step: Step): Node[] {
    const { maker, key, move, ...spent } = step;
    const known = this.#ids.get(key);
    const id = known ?? this.#from.length;
    if (!move.isLiberty) this.#edges.push([from, id]);
    if (known !== undefined) {
      this.#compare(known, from, step);
      return [];
    }
    this.#ids.set(key, id);
    this.#from.push(from);
    this.#by.push(move.name);
    return [{ id, maker, ...spent }];
  }

  /** One state in so many that was seen before is opened all the same: it must lead where the first of its kind led. */
  #compare(id: number, from: number, step: Step): void {
    const { maker, move } = step;
    if (!this.#isSampled(this.#edges.length, this.search.sampling.compared) || isEnd(maker.place)) return;
    if (this.#isGoal(maker)) return;
    this.#found.compared += 1;
    const signature = signatureOf(this.#stepsFrom(step));
    this.#twins.push({ id, signature, story: `${this.#story(from)}; ${move.name}` });
  }

  #follow({ id, maker }: Node): void {
    if (!this.#isSampled(id, this.search.sampling.followed)) return;
    this.#found.followed += 1;
    const lost = followSensibly(maker.fork(), this.search.goal);
    if (lost) this.#found.lost.push(`${lost}: ${this.#story(id)}`);
  }

  #isSampled = (count: number, oneIn: number): boolean => oneIn > 0 && count % oneIn === 0;

  /** Every move that the batch takes, with where it leads. */
  #stepsFrom({ maker, corrections, liberties }: Spent & { maker: Maker }): Step[] {
    const { depth } = this.search;
    return movesAt(maker, depth)
      .filter(({ corrects }) => !corrects || corrections < depth.corrections)
      .filter(({ isLiberty }) => !isLiberty || liberties < depth.liberties)
      .flatMap((move) => {
        const after = maker.fork();
        after.waitUntil(move.at);
        move.deed(after);
        if (after.facts === maker.facts) return [];
        const spent = {
          corrections: corrections + (move.corrects ? 1 : 0),
          liberties: liberties + (move.isLiberty ? 1 : 0),
        };
        const left = depth.corrections - spent.corrections;
        const key = hash('sha1', `${left} ${spent.liberties} ${stateKey(after, left)}`, 'base64');
        return [{ ...spent, maker: after, move, key }];
      });
  }

  #story(id: number): string {
    const told: string[] = [];
    for (let at = id; at > 0; at = this.#from[at] ?? -1) told.unshift(this.#by[at] ?? '');
    return told.join('; ');
  }
}

/** Where a state leads: two of one key must lead to the same. */
const signatureOf = (steps: readonly Step[]): string =>
  [...new Set(steps.map(({ key }) => key.slice(0, 8)))].toSorted().join('');

export const explore = (search: Search, rule: Rule): Explored =>
  withoutStacks(() => new Exploration(search, rule).run());
