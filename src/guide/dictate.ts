import { tell } from '../text/text';
import { askedIn, dictated, dictationAt, isYesNo, lastIn, withAnswer, type Field } from './dictation';
import type { Effect } from './guide-actions';
import type { GuideContext } from './guide-context';
import type { GuideCommand, GuideEvent } from './guide-events';
import { numberAsked } from './number-asked';
import { spokenAnswer } from './spoken-answer';

/** What is asked of the maker in a dictation that is under way. */
export function fieldAsked({ stage, dictation }: GuideContext): Field | undefined {
  return stage === 'dictating' && dictation ? askedIn(dictation) : undefined;
}

/** Whether a number is asked for now, and has been asked to its end. */
export const isNumberAsked = (context: GuideContext): boolean => {
  const field = fieldAsked(context);
  return context.told && field !== undefined && !isYesNo(field);
};

export const isYesNoAsked = (context: GuideContext): boolean => {
  const field = fieldAsked(context);
  return field !== undefined && isYesNo(field);
};

export const beginDictation = (context: GuideContext): Effect => ({
  context: {
    ...context,
    dictation: context.situation && dictationAt(context.situation),
    draft: undefined,
    before: [],
  },
  out: [],
});

/** A number is taken, said back with the next question; what cannot be is told, and asked again. */
export function takeNumber(
  context: GuideContext,
  { value }: Extract<GuideEvent, { type: 'number' }>,
): Effect {
  const { situation, words } = context;
  const field = fieldAsked(context);
  if (!situation || !field || isYesNo(field)) return { context, out: [] };
  const { parse } = numberAsked(field, situation, words.formats.units);
  const taken = parse(String(value));
  return taken.ok
    ? answered(context, field, taken.value)
    : { context: { ...context, before: [tell(words.text, taken.problem, words.formats)] }, out: [] };
}

export function takeYesNo(context: GuideContext, { type }: GuideCommand): Effect {
  const field = fieldAsked(context);
  return field && isYesNo(field) ? answered(context, field, type === 'yes') : { context, out: [] };
}

function answered(context: GuideContext, field: Field, answer: number | boolean): Effect {
  const { situation, dictation, words } = context;
  if (!situation || !dictation) return { context, out: [] };
  const next = withAnswer(dictation, field, answer);
  const isFull = askedIn(next) === undefined;
  return {
    context: {
      ...context,
      dictation: next,
      draft: isFull ? dictated(next, situation) : undefined,
      before: isFull ? [] : [spokenAnswer(field, answer, words)],
    },
    out: [],
  };
}

/** What was answered last is asked once more. */
export function takeBackLast(context: GuideContext): Effect {
  const { dictation, words } = context;
  const last = dictation && lastIn(dictation);
  if (!last) return { context, out: [] };
  return {
    context: {
      ...context,
      dictation: withAnswer(dictation, last, undefined),
      before: [words.text.dictated.notCounted],
    },
    out: [],
  };
}

/** After "no" to what was read back, a card that was spoken is asked anew from its first line. */
export const askedAnew = ({ dictation, situation }: GuideContext): GuideContext['dictation'] =>
  dictation && situation && dictationAt(situation);
