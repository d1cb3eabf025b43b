import { tell } from '../text/text';
import { askedAnew } from './dictate';
import { isDoubt } from './doubt';
import { heard, report, type Effect } from './guide-actions';
import type { GuideContext } from './guide-context';
import type { Card, GuideCommand, GuideEvent, GuideReport } from './guide-events';
import { readBack } from './read-back';
import { reportFor } from './report-for';

type Reporting = Extract<GuideEvent, { type: 'draft' }> | GuideCommand;

/** The report in an event: a card's own, or what a command comes to where the guide stands. */
export const reportIn = (context: GuideContext, event: Reporting): GuideReport | undefined =>
  event.type === 'draft' ? event.report : reportFor(context, event);

const TYPED_IN: ReadonlySet<string> = new Set(['touch', 'key']);

/** A card is filled in with fingers; a pad is pressed with a knuckle. */
const isTypedIn = (event: Reporting): boolean => event.type === 'draft' && TYPED_IN.has(event.report.how);

/** Whether an event's report must be read back, and answered with yes, before it counts. */
export function mustBeReadBack(context: GuideContext, event: Reporting): boolean {
  const { situation, words, at, stage } = context;
  if (!situation || (stage === 'reading back' && event.type !== 'draft')) return false;
  const made = reportIn(context, event);
  return made !== undefined && readBack(made, words, situation, at) !== undefined;
}

export const draftIt = (context: GuideContext, event: Reporting): Effect => ({
  context: {
    ...context,
    draft: reportIn(context, event),
    // What is typed takes the place of what was being told.
    dictation: event.type === 'draft' ? undefined : context.dictation,
    doubt: undefined,
    typed: context.typed || isTypedIn(event),
    before: [],
  },
  out: [],
});

export function reportIt(context: GuideContext, event: Reporting): Effect {
  const made = reportIn(context, event);
  const typed = context.typed || isTypedIn(event);
  return made ? report({ ...context, typed }, made) : { context, out: [] };
}

export const dropDraft = (context: GuideContext): Effect => ({
  context: {
    ...context,
    draft: undefined,
    doubt: undefined,
    dictation: askedAnew(context),
    before: [context.words.text.guide.notCounted],
  },
  out: [],
});

type Refused = Extract<GuideEvent, { type: 'refused' }>;

/** A reading that is only doubted, and was not asked about yet. */
export const isAskedOnceMore = ({ sent }: GuideContext, { problem }: Refused): boolean =>
  isDoubt(problem) && sent?.type === 'reading taken' && sent.confirmed !== true;

/** Asks once more; with a yes it is reported as confirmed. */
export const askOnceMore = (context: GuideContext, { problem }: Refused): Effect => ({
  context: {
    ...context,
    reported: false,
    before: [],
    draft: context.sent?.type === 'reading taken' ? { ...context.sent, confirmed: true } : undefined,
    doubt: isDoubt(problem) ? problem : undefined,
  },
  out: [],
});

/** Why the batch did not take it, and then what is asked once more. */
export const refuse = (context: GuideContext, { problem }: Refused): Effect => ({
  context: {
    ...context,
    reported: false,
    dictation: undefined,
    before: [tell(context.words.text, problem, context.words.formats)],
  },
  out: [],
});

export const show = (context: GuideContext, card: Card): Effect => ({
  context,
  out: [{ type: 'show', card }],
});

/** Everything stops, nothing is lost, and the screen asks what happened. */
export const goneWrong = (context: GuideContext): Effect => ({
  context: {
    ...context,
    telling: true,
    before: [
      context.words.text.guide.wentWrong,
      ...(context.listening ? [context.words.text.ears.sayWhat] : []),
    ],
  },
  out: [{ type: 'show', card: 'mishap' }],
});

export const lookBack = (context: GuideContext): Effect =>
  heard({ ...context, lookedBack: context.lookedBack + 1, before: [] });

/** A clock that ran out goes on by itself where nothing can be spoiled. */
export const goOnByItself = (context: GuideContext): Effect => {
  const act = context.situation?.now?.act.id;
  return act === undefined ? { context, out: [] } : report(context, { type: 'act done', how: 'timer', act });
};
