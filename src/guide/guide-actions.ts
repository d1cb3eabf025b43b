import type { Command } from '../voice/commands';
import type { Tone } from '../voice/tones';
import { aside } from './aside';
import { callsDue } from './clock-calls';
import type { GuideContext } from './guide-context';
import type { GuideEvent, GuideOut, GuideReport, Stage } from './guide-events';
import { ownLines } from './own-lines';
import { prelude } from './prelude';
import { warningOf } from './warning';
import type { Situation } from './situation';

/** What an action comes to: the guide's new mind, and what goes out. Pure; the machine only carries it out. */
export type Effect = { context: GuideContext; out: readonly GuideOut[] };

export const tone = (each: Tone): GuideOut => ({ type: 'tone', tone: each });

/** The event's own time is the guide's time. */
export const dated = (context: GuideContext, event: { type: string } | GuideEvent): GuideContext =>
  'at' in event ? { ...context, at: event.at } : context;

/** Says lines in place of what is being said. Nothing to say is said at once. */
export function say(
  context: GuideContext,
  saying: 'own' | 'aside',
  lines: readonly string[],
  before: readonly GuideOut[] = [],
): Effect {
  if (lines.length === 0)
    return { context: { ...context, saying: undefined, lines, told: true, since: context.at }, out: before };
  const utterance = context.utterance + 1;
  return {
    context: { ...context, utterance, saying, lines },
    out: [...before, { type: 'say', utterance, lines }],
  };
}

const TONE_AT: Partial<Record<Stage, Tone>> = { warning: 'warn', 'time up': 'time up' };

/** What is asked in this stage, with what must be said before it. A stop-tone comes right before its hazard. */
export function sayOwn(context: GuideContext): Effect {
  const alert = TONE_AT[context.stage];
  if (alert && context.before.length > 0) return say({ ...context, before: [] }, 'aside', context.before);
  return say(context, 'own', [...context.before, ...ownLines(context)], alert ? [tone(alert)] : []);
}

export function enter(context: GuideContext, stage: Stage): Effect {
  const { at } = context;
  const lookedBack = stage === 'looking back' ? context.lookedBack : 0;
  const telling = stage === 'held' && context.telling;
  return sayOwn({
    ...context,
    stage,
    lookedBack,
    telling,
    unsure: undefined,
    told: false,
    repeated: false,
    calledUntil: at,
    heldAt: at,
  });
}

export const takeUp = (context: GuideContext, situation: Situation): Effect => ({
  context: {
    ...context,
    before: prelude(context, situation),
    situation,
    draft: undefined,
    dictation: undefined,
    doubt: undefined,
    reported: false,
    typed: false,
    heeded: situation.frame ? [] : context.heeded,
  },
  out: [],
});

const ANSWERED: ReadonlySet<Stage> = new Set<Stage>(['warning', 'reading back']);

/** An utterance is out: what was asked can be answered now; what was asked before an aside is asked again if it was cut short. */
export function said(context: GuideContext): Effect {
  if (context.saying === 'aside' && !context.told) return sayOwn(context);
  const asked = ANSWERED.has(context.stage) || context.situation?.asks !== undefined;
  const first = context.saying === 'own' && asked && !context.repeated;
  return {
    context: { ...context, saying: undefined, told: true, since: context.at, before: [] },
    out: first ? [tone('ready')] : [],
  };
}

export const sayAside = (context: GuideContext, command: Command): Effect =>
  say(context, 'aside', aside(command, context));

export const heard = (context: GuideContext): Effect => ({
  context: { ...context, unsure: undefined },
  out: [tone('heard')],
});
export const notHeard = (context: GuideContext): Effect => ({ context, out: [tone('not heard')] });

export const report = (context: GuideContext, what: GuideReport): Effect => ({
  context: { ...context, reported: true, draft: undefined, doubt: undefined, sent: what },
  out: [{ type: 'report', report: what }],
});

export const heed = (context: GuideContext): Effect => {
  const warning = context.situation && warningOf(context.situation);
  return {
    context: { ...context, heeded: [...context.heeded, ...(warning === undefined ? [] : [warning])] },
    out: [],
  };
};

/** Calls while a clock runs: they stand for what is asked, so nothing is said again after them. */
export function call(context: GuideContext, lines: readonly string[]): Effect {
  return say({ ...context, told: true, calledUntil: context.at }, 'aside', lines);
}

/** What is due to be called out at a moment. */
export function due({ situation, calledUntil, words, at }: GuideContext): string[] {
  const { now, clock } = situation ?? {};
  return now && clock?.running ? callsDue(now.act, clock, calledUntil, at, words) : [];
}
