import type { ActorRefFrom } from 'xstate';
import type { Instant } from '../domain/unit';
import { DECOYS } from '../voice/decoys';
import type { EarNews, Ears, EarState } from '../voice/ear/ears';
import { grammarAgainst, grammarFor } from '../voice/grammar-for';
import { earshot, sayable, type Earshot } from './earshot';
import type { guideMachine } from './guide-machine';
import { HardOfHearing } from './hard-of-hearing';
import { takenFor } from './taken-for';

/** The same phrase again so soon is the same word said twice, or its echo. */
const TWICE = 1500;

/** Lends a guide its ears: only what is on offer where it stands can be heard. Gives how to take them away again. */
export function listen(actor: ActorRefFrom<typeof guideMachine>, ears: Ears, now: () => Instant): () => void {
  const listening = new Listening(actor, ears, now);
  const subscription = actor.subscribe(() => listening.attend());
  const deafen = ears.subscribe((news) => listening.heed(news));
  listening.turned(ears.state);
  listening.attend();
  return () => {
    subscription.unsubscribe();
    deafen();
  };
}

class Listening {
  readonly #actor: ActorRefFrom<typeof guideMachine>;
  readonly #ears: Ears;
  readonly #now: () => Instant;
  readonly #hard: HardOfHearing;
  #within: Earshot = { phrases: new Map() };
  #last: { words: string; at: Instant } | undefined;

  constructor(actor: ActorRefFrom<typeof guideMachine>, ears: Ears, now: () => Instant) {
    this.#actor = actor;
    this.#ears = ears;
    this.#now = now;
    this.#hard = new HardOfHearing((why) => {
      const isSaying = actor.getSnapshot().context.saying !== undefined;
      if (!isSaying) actor.send({ type: 'hard to hear', why, at: now() });
      return !isSaying;
    });
  }

  /** What is on offer has changed, it may be. */
  attend(): void {
    const { context } = this.#actor.getSnapshot();
    const next = earshot(context);
    if (keyOf(next) === keyOf(this.#within)) return;
    this.#within = next;
    const { phrases, numbers } = next;
    // A guide that is busy offers nothing, and what it hears meanwhile is not heeded.
    if (phrases.size === 0) return;
    const offer = { phrases: [...phrases.keys()], ...(numbers ? { numbers } : {}) };
    this.#ears.listenFor(grammarFor(offer), grammarAgainst(offer, sayable(context.words), DECOYS));
  }

  heed(news: EarNews): void {
    if (news.type === 'heard') this.#hear(news);
    if (news.type === 'room') this.#hard.room(news.unreliable, this.#now());
    if (news.type === 'state') this.turned(news.state);
  }

  turned(state: EarState): void {
    const listening = state === 'listening' || state === 'shut';
    if (listening !== this.#actor.getSnapshot().context.listening)
      this.#actor.send({ type: 'ears', listening, at: this.#now() });
  }

  #hear(heard: Extract<EarNews, { type: 'heard' }>): void {
    if (this.#within.phrases.size === 0) return;
    const at = this.#now();
    const taken = takenFor(heard, this.#within);
    if (!heard.hearing || !taken) {
      this.#hard.missed(at);
      return;
    }
    this.#hard.understood();
    const { words } = heard.hearing;
    const isTwice = this.#last?.words === words && at - this.#last.at < TWICE;
    this.#last = { words, at };
    if (!isTwice) this.#actor.send({ ...taken, at });
  }
}

const keyOf = ({ phrases, numbers }: Earshot): string => JSON.stringify([[...phrases.keys()], numbers]);
