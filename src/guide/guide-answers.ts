import { meant, notMeant } from './doubtful';
import { heard, notHeard, sayAside, sayOwn } from './guide-actions';
import { draftIt, mustBeReadBack, reportIn, reportIt } from './guide-effects';
import type { GuideCommand } from './guide-events';
import { isUnanswered } from './guide-guards';
import { does, offeredAnd, onOffer, when } from './guide-setup';
import { isUnsure } from './offered';

export const unheard = { actions: does(notHeard) };

/** A question: it is answered, and nothing moves. */
export const answerAside = [does(heard), does((context, { type }: GuideCommand) => sayAside(context, type))];
export const asks = [{ guard: when(onOffer), actions: answerAside }, unheard];

/** An answer: read back where it matters, else reported. */
export const answers = [
  {
    guard: offeredAnd(mustBeReadBack),
    target: '.reading back',
    actions: [does(heard), does(draftIt)],
  } as const,
  {
    guard: offeredAnd((context, event) => reportIn(context, event) !== undefined),
    actions: [does(heard), does(reportIt)],
  },
  unheard,
];

/** Yes and no to "did you say". */
export const isMeant = { guard: offeredAnd(isUnsure), actions: does(meant) };
export const isNotMeant = { guard: offeredAnd(isUnsure), actions: does(notMeant) };

export const sayAgain = does((context) => sayOwn({ ...context, repeated: true }));
export const repeats = { tick: { guard: when(isUnanswered), actions: sayAgain } };
