import type { Problem } from '../../domain/problem';
import { isDoubt } from '../../guide/doubt';
import type { GuideContext } from '../../guide/guide-context';
import type { Card, GuideReport, How } from '../../guide/guide-events';
import type { Words } from '../../guide/guide-text';
import { lead, type GuidePorts, type Lead } from '../../guide/lead';
import type { Situation } from '../../guide/situation';
import type { Mishap } from '../../procedure/mishap';
import type { Command } from '../../voice/commands';
import type { HandsFree, Presence } from './hands-free';

/** Cards that lie there while the guide holds still, and no longer. */
const HOLDING: ReadonlySet<Card | undefined> = new Set<Card | undefined>(['mishap', 'recap']);
export const isHolding = (card: Card | undefined): boolean => HOLDING.has(card);

/** A guide at work, readable in any component. */
export class LedHands implements HandsFree {
  readonly #lead: Lead;
  readonly #presence: Presence;
  #context: GuideContext;
  #card = $state<Card>();
  #mishap = $state<Mishap>();
  #refused = $state.raw<Problem>();

  constructor(words: Words, ports: Omit<GuidePorts, 'show' | 'deafen'>, presence: Presence) {
    this.#presence = presence;
    this.#lead = lead(words, {
      ...ports,
      deafen: () => this.turnEars(false),
      show: (card, mishap) => this.open(card, mishap),
      report: async (report) => this.#settle(report, await ports.report(report)),
    });
    const { actor } = this.#lead;
    this.#context = $state.raw(actor.getSnapshot().context);
    actor.subscribe(({ context }) => {
      this.#context = context;
      if (context.stage !== 'held' && isHolding(this.#card)) this.open(undefined);
    });
  }

  get context() {
    return this.#context;
  }
  get card() {
    return this.#card;
  }
  get mishap() {
    return this.#mishap;
  }
  get refused() {
    return this.#refused;
  }
  get captions() {
    return this.#presence.captions;
  }
  get sound() {
    return this.#presence.sound;
  }
  get awake() {
    return this.#presence.awake;
  }
  get ear() {
    return this.#presence.ear;
  }

  open = (card: Card | undefined, mishap?: Mishap): void => {
    this.#card = card;
    this.#mishap = mishap;
  };
  turnEars = (on: boolean): void => this.#presence.turnEars(on);
  putAway = (): void => {
    this.#refused = undefined;
  };
  tell = (situation: Situation): void => this.#lead.tell(situation);
  draft = (report: GuideReport): void => this.#lead.draft(report);
  stop = (): void => this.#lead.stop();

  hear = (command: Command, how: How): void => {
    if (command === 'go on' && isHolding(this.#card)) this.open(undefined);
    this.#lead.hear(command, how);
  };

  #settle(report: GuideReport, problem: Problem | undefined): Problem | undefined {
    this.#refused = problem && isDoubt(problem) ? undefined : problem;
    if (!problem && report.type === 'reading taken') this.open(undefined);
    return problem;
  }
}
