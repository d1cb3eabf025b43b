import type { Problem } from '../../domain/problem';
import { isDoubt } from '../../guide/doubt';
import type { GuideContext } from '../../guide/guide-context';
import type { Card, GuideReport, How } from '../../guide/guide-events';
import type { Words } from '../../guide/guide-text';
import { lead, type GuidePorts, type Lead } from '../../guide/lead';
import type { Situation } from '../../guide/situation';
import type { Mishap } from '../../procedure/mishap';
import type { Command } from '../../voice/commands';
import type { After } from '../../voice/engine';
import type { HandsFree, Presence } from './hands-free';

type LedPorts = Omit<GuidePorts, 'show' | 'deafen'> & { after: After };

/** Cards that lie there while the guide holds still, and no longer. */
const HOLDING: ReadonlySet<Card | undefined> = new Set<Card | undefined>(['mishap', 'recap']);
export const isHolding = (card: Card | undefined): boolean => HOLDING.has(card);

/** An answer is on the disk sooner than this; what takes longer is shown. */
const SOON = 300;

/** A guide at work, readable in any component. */
export class LedHands implements HandsFree {
  readonly #lead: Lead;
  readonly #presence: Presence;
  readonly #after: After;
  #callOff: (() => void) | undefined;
  #context: GuideContext;
  #card = $state<Card>();
  #mishap = $state<Mishap>();
  #refused = $state.raw<Problem>();

  constructor(words: Words, ports: LedPorts, presence: Presence) {
    this.#presence = presence;
    this.#after = ports.after;
    this.#lead = lead(words, {
      ...ports,
      deafen: () => this.turnEars(false),
      show: (card, mishap) => this.open(card, mishap),
      report: async (report) => this.#settle(report, await ports.report(report)),
    });
    const { actor } = this.#lead;
    this.#context = $state.raw(actor.getSnapshot().context);
    actor.subscribe(({ context }) => {
      this.#follow(context);
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
  stop = (): void => {
    this.#callOff?.();
    this.#lead.stop();
  };

  hear = (command: Command, how: How): void => {
    // Pressed twice: the first answer is still on its way.
    if (this.#isUnderway) return;
    if (command === 'go on' && isHolding(this.#card)) this.open(undefined);
    this.#lead.hear(command, how);
  };

  get #isUnderway(): boolean {
    return this.#lead.actor.getSnapshot().context.reported;
  }

  /** Pads that go dead and come back in the blink of an eye are noise, and hold up the next act. */
  #follow(context: GuideContext): void {
    if (context.reported) {
      this.#callOff ??= this.#after(SOON, () => (this.#context = this.#lead.actor.getSnapshot().context));
      return;
    }
    this.#callOff?.();
    this.#callOff = undefined;
    this.#context = context;
  }

  #settle(report: GuideReport, problem: Problem | undefined): Problem | undefined {
    this.#refused = problem && isDoubt(problem) ? undefined : problem;
    if (!problem && report.type === 'reading taken') this.open(undefined);
    return problem;
  }
}
