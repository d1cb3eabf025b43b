import { hash } from 'node:crypto';
import { randomFrom } from '../../src/domain/random-from';
import { isEnd } from '../../src/procedure/phase';
import { withoutStacks } from '../story/without-stacks';
import type { Maker } from '../story/maker';
import { movesAt, type Move } from './moves';
import type { Readings } from './readings';
import { stateKey } from './state-key';
import { followSensibly } from './follow-sensibly';
import { waysOn } from './ways-on';

/** What a path may hold only so much of: readings struck, the guide's advice not taken, things gone wrong. */
export type Budget = Readonly<Record<'corrections' | 'liberties' | 'mishaps', number>>;

/** How far to look: the most of each on one path, the ways back that it may choose, what may be read, and how acts may be answered. */
export type Depth = Budget & { returns: number; readings: Readings; answers: 'careful' | 'any' };

/** How often a state is followed to its end, and a journey made from one that was seen before: one in so many. */
export type Sampling = { followed: number; compared: number };

export type Search = { start: Maker; goal: string; depth: Depth; sampling: Sampling };

/** What is wrong where a batch stands; nothing when all is well. */
export type Rule = (maker: Maker) => string | undefined;

/** Moves of a journey, at most. */
const JOURNEY = 40;

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

type Node = { id: number; maker: Maker; left: Budget };
/** A state on a journey from one that was seen before: where it leads, and how the journey came to it. */
type Twin = { key: string; signature: string; from: number; moves: readonly string[]; nth: number };
type Step = { maker: Maker; left: Budget; key: string; move: Move };

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
  readonly #twins: Twin[] = [];
  #merged = 0;
  readonly #chance = randomFrom(1);
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
    let frontier: Node[] = [{ id: 0, maker: this.search.start, left: this.search.depth }];
    while (frontier.length > 0) frontier = frontier.flatMap((node) => this.#visit(node));
    const leading = waysOn(this.#from.length, this.#edges, this.#goals);
    const stuck = this.#from.map((_, id) => id).filter((id) => !leading.has(id));
    const unlike = this.#twins.filter(
      ({ key, signature }) => this.#signatures[this.#idOf(key)] !== signature,
    );
    return {
      ...this.#found,
      stuck: stuck.map((id) => this.#story(id)),
      unlike: unlike.map(
        ({ key, from, moves, nth }) =>
          `${this.#story(this.#idOf(key))}\n  is taken for\n${[this.#story(from), ...moves.slice(0, nth)].join('; ')}`,
      ),
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
    if (this.#isOver(maker)) return [];
    this.#follow(node);
    const steps = this.#stepsFrom(node);
    found.transitions += steps.length;
    this.#signatures[id] = signatureOf(steps);
    return steps.flatMap((step) => this.#arrive(id, step));
  }

  #isOver = (maker: Maker): boolean => this.#isGoal(maker) || isEnd(maker.place);

  #isGoal = ({ place }: Maker): boolean => place === this.search.goal;

  #arrive(from: number, step: Step): Node[] {
    const { maker, key, move, left } = step;
    const known = this.#ids.get(key);
    const id = known ?? this.#from.length;
    if (!isUnasked(move)) this.#edges.push([from, id]);
    if (known !== undefined) {
      this.#compare(from, step);
      return [];
    }
    this.#ids.set(key, id);
    this.#from.push(from);
    this.#by.push(move.name);
    return [{ id, maker, left }];
  }

  #idOf = (key: string): number => this.#ids.get(key) ?? -1;

  /**
   * From one state in so many that was seen before a journey is made all the same, whichever way chance will have it:
   * all along, every state must lead where the first of its kind led.
   */
  #compare(from: number, step: Step): void {
    this.#merged += 1;
    if (!this.#isSampled(this.#merged, this.search.sampling.compared)) return;
    const moves: string[] = [];
    for (let at: Step | undefined = step; at && moves.length < JOURNEY && !this.#isOver(at.maker);) {
      moves.push(at.move.name);
      const steps = this.#stepsFrom(at);
      this.#twins.push({ key: at.key, signature: signatureOf(steps), from, moves, nth: moves.length });
      at = steps[Math.floor(this.#chance() * steps.length)];
    }
    this.#found.compared += moves.length;
  }

  #follow({ id, maker }: Node): void {
    if (!this.#isSampled(id, this.search.sampling.followed)) return;
    this.#found.followed += 1;
    const lost = followSensibly(maker.fork(), this.search.goal);
    if (lost) this.#found.lost.push(`${lost}: ${this.#story(id)}`);
  }

  #isSampled = (count: number, oneIn: number): boolean => oneIn > 0 && count % oneIn === 0;

  /** Every move that the batch takes, with where it leads. */
  #stepsFrom({ maker, left }: Pick<Node, 'maker' | 'left'>): Step[] {
    return movesAt(maker, this.search.depth, left).flatMap((move) => {
      const after = maker.fork();
      after.waitUntil(move.at);
      move.deed(after);
      if (after.facts === maker.facts) return [];
      const rest = move.costs ? { ...left, [move.costs]: left[move.costs] - 1 } : left;
      const { corrections, liberties, mishaps } = rest;
      const told = this.#isOver(after)
        ? after.place
        : `${String(corrections)} ${String(liberties)} ${String(mishaps)} ${stateKey(after, rest)}`;
      return [{ maker: after, left: rest, move, key: hash('sha1', told, 'base64') }];
    });
  }

  #story(id: number): string {
    const told: string[] = [];
    for (let at = id; at > 0; at = this.#from[at] ?? -1) told.unshift(this.#by[at] ?? '');
    return told.join('; ');
  }
}

/** Nobody can be asked to leave something out or to have something go wrong: no way on leads through that. */
const isUnasked = ({ costs }: Move): boolean => costs === 'liberties' || costs === 'mishaps';

/** Where a state leads: two of one key must lead to the same. */
const signatureOf = (steps: readonly Step[]): string =>
  [...new Set(steps.map(({ key }) => key.slice(0, 8)))].toSorted().join('');

export const explore = (search: Search, rule: Rule): Explored =>
  withoutStacks(() => new Exploration(search, rule).run());
