import type { ActorRefFrom } from 'xstate';
import type { Instant } from '../domain/unit';
import type { EarNews, Ears, EarState } from '../voice/ear/ears';
import { DECOYS } from '../voice/decoys';
import { decoyGrammar, grammarFor } from '../voice/grammar-for';
import { earshot, type Earshot } from './earshot';
import type { HardToHear } from './guide-events';
import type { guideMachine } from './guide-machine';
import { takenFor } from './taken-for';

/** The same phrase again so soon is the same word said twice, or its echo. */
const TWICE = 1500;
const A_WHILE = 40_000;
const MISSES = 4;
const LOUD_FOR = 5000;
const TOLD_AGAIN_AFTER = 180_000;

/** Lends a guide its ears: only what is on offer where it stands can be heard. Gives how to take them away again. */
export function listen(actor: ActorRefFrom<typeof guideMachine>, ears: Ears, now: () => Instant): () => void {
  let within: Earshot = { phrases: new Map() };
  let last: { words: string; at: Instant } | undefined;
  const trouble = troubles((why) => {
    const isSaying = actor.getSnapshot().context.saying !== undefined;
    if (!isSaying) actor.send({ type: 'hard to hear', why, at: now() });
    return !isSaying;
  });

  function attend(): void {
    const { context } = actor.getSnapshot();
    const next = earshot(context);
    if (keyOf(next) === keyOf(within)) return;
    within = next;
    const { phrases, numbers } = next;
    // A guide that is busy offers nothing, and what it hears meanwhile is not heeded.
    if (phrases.size === 0) return;
    ears.listenFor(
      grammarFor({ phrases: [...phrases.keys()], ...(numbers ? { numbers } : {}) }),
      decoyGrammar(DECOYS),
    );
  }

  function hear(news: Extract<EarNews, { type: 'heard' }>): void {
    if (within.phrases.size === 0) return;
    const at = now();
    const taken = takenFor(news.hearing, within);
    if (!taken) {
      trouble.missed(at);
      return;
    }
    trouble.understood();
    const words = news.hearing?.words ?? '';
    const isTwice = last?.words === words && at - last.at < TWICE;
    last = { words, at };
    if (!isTwice) actor.send({ ...taken, at });
  }

  function heed(news: EarNews): void {
    if (news.type === 'heard') hear(news);
    if (news.type === 'room') trouble.room(news.unreliable, now());
    if (news.type === 'state') turned(news.state);
  }

  function turned(state: EarState): void {
    const listening = state === 'listening' || state === 'shut';
    if (listening !== actor.getSnapshot().context.listening)
      actor.send({ type: 'ears', listening, at: now() });
  }

  const { unsubscribe } = actor.subscribe(attend);
  const deafen = ears.subscribe(heed);
  turned(ears.state);
  attend();
  return () => {
    unsubscribe();
    deafen();
  };
}

const keyOf = ({ phrases, numbers }: Earshot): string => JSON.stringify([[...phrases.keys()], numbers]);

/** Tells when the ears are of little use, and not again for a good while. What cannot be told now is told later. */
function troubles(tell: (why: HardToHear) => boolean) {
  const told = new Map<HardToHear, number>();
  let misses: number[] = [];
  let loudSince: number | undefined;
  const once = (why: HardToHear, at: number): void => {
    if (at - (told.get(why) ?? -Infinity) < TOLD_AGAIN_AFTER) return;
    if (tell(why)) told.set(why, at);
  };
  return {
    missed(at: number) {
      misses = [...misses.filter((each) => at - each < A_WHILE), at];
      if (misses.length >= MISSES) once('misses', at);
    },
    understood: () => void (misses = []),
    room(isLoud: boolean, at: number) {
      loudSince = isLoud ? (loudSince ?? at) : undefined;
      if (loudSince !== undefined && at - loudSince >= LOUD_FOR) once('noise', at);
    },
  };
}
