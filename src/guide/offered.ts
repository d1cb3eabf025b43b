import type { Command } from '../voice/commands';
import { timeLeft } from '../workflow/clock';
import type { Gate } from '../procedure/phase';
import { isYesNo, lastIn, askedIn } from './dictation';
import type { GuideContext } from './guide-context';
import type { Stage } from './guide-events';
import type { Situation } from './situation';
import { isTyped } from './touches';

/**
 * What can be said or pressed now, the main one first. Nothing else is heard. While a clock runs the main one asks how
 * long: an elbow on the largest pad, or a pedal trodden on twice, must not end a stir.
 */
export function offered(context: GuideContext): Command[] {
  const { stage, situation, reported } = context;
  if (!situation || reported) return [];
  return [
    ...OFFERED[stage](situation, context),
    ...(isUnsure(context) ? (['yes', 'no'] as const) : []),
    ...ALWAYS.filter((command) => !NOT_WHILE[command]?.includes(stage)),
    ...(mayTakeBack(context) ? (['wrong'] as const) : []),
    ...(context.listening ? (['stop listening'] as const) : []),
  ];
}

/** What is on offer without what was perhaps heard. */
export const offeredOutright = (context: GuideContext): Command[] =>
  offered({ ...context, unsure: undefined });

/** Something was perhaps heard, and is on offer still: the ears may have been turned off since it was asked about. */
export const isUnsure = (context: GuideContext): boolean =>
  context.unsure !== undefined && offeredOutright(context).includes(context.unsure);

/** What will be on offer once all is said and written down, so that it can be shown beforehand and keep its place. */
export const offeredSoon = (context: GuideContext): Command[] =>
  offered({ ...context, told: true, reported: false });

/** On offer whatever the guide is about, but for a few stages. */
export const ALWAYS = [
  'again',
  'back',
  'wait',
  'why',
  'where are we',
  'what can I say',
  'something went wrong',
] as const satisfies readonly Command[];

const NOT_WHILE: Partial<Record<Command, readonly Stage[]>> = {
  back: ['at a gate', 'not due', 'held', 'reading back', 'dictating', 'timing', 'time up', 'looking back'],
  wait: ['held', 'not due', 'looking back'],
  why: ['not due', 'reading back', 'held', 'looking back'],
};

/** Gates that a new reading can help. */
const READ_AT: ReadonlySet<Gate> = new Set<Gate>(['proving mixed', 'proving dry', 'proving still']);

type Offers = (situation: Situation, context: GuideContext) => readonly Command[];

const OFFERED: Record<Stage, Offers> = {
  resting: () => [],
  warning: (_, { told }) => (told ? ['ready'] : []),
  acting,
  dictating,
  'reading back': (_, { told }) => (told ? ['yes', 'no'] : []),
  timing: ({ now }) => [
    'how long',
    'one more minute',
    ...(now?.act.kind === 'stir' ? (['finish'] as const) : []),
  ],
  'time up': () => ['done', 'one more minute'],
  'at a gate': atGate,
  'not due': ({ place, next }) => [
    ...(place === 'ferment' ? (['new reading'] as const) : []),
    ...(next ? (['how long'] as const) : []),
  ],
  held: ({ clock }, { at }) => [
    'go on',
    ...(clock && timeLeft(clock, at) > 0 ? (['how long'] as const) : []),
  ],
  'looking back': ({ done }, { lookedBack }) => [
    'go on',
    ...(lookedBack < done.length ? (['back'] as const) : []),
  ],
};

function dictating(_: Situation, { told, dictation }: GuideContext): readonly Command[] {
  const field = told && dictation ? askedIn(dictation) : undefined;
  return field && isYesNo(field) ? ['yes', 'no'] : [];
}

/** What was told last can be taken back; never by the main key, on which a foot may come down twice. */
const mayTakeBack = ({ stage, told, dictation }: GuideContext): boolean =>
  stage === 'dictating' && told && dictation !== undefined && lastIn(dictation) !== undefined;

function acting(
  { now, asks, obstacle }: Situation,
  { listening }: Pick<GuideContext, 'listening'>,
): readonly Command[] {
  if (!now) return [];
  const { act } = now;
  if (act.kind === 'stir' || act.kind === 'timer') return ['start'];
  if (asks) return ['yes', 'no'];
  if (act.kind === 'account' || act.step === 'fill to mark') return ['done'];
  if (listening && isTyped(act) && act.kind !== 'reading') return ['write down'];
  if (act.kind === 'reading') return ['new reading'];
  const isPlain = act.kind === 'do' || act.kind === 'add' || act.kind === 'wait';
  return isPlain && !(obstacle && act.check) ? ['done'] : [];
}

function atGate({ gate, asks }: Situation, { told }: GuideContext): readonly Command[] {
  if (!gate || !told) return [];
  const read: readonly Command[] = READ_AT.has(gate.gate) && !gate.verdict.open ? ['new reading'] : [];
  if (gate.verdict.open || gate.remedy) return ['go on', ...read];
  return asks ? ['yes', 'no', ...read] : read;
}
