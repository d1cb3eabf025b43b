import { MISHAPS } from '../procedure/mishap';
import { tone, say, sayOwn, type Effect } from './guide-actions';
import type { GuideContext } from './guide-context';
import type { GuideCommand, GuideEvent } from './guide-events';
import { whatHappened } from './guide-text';
import { offeredOutright } from './offered';

type Of<Type extends GuideEvent['type']> = Extract<GuideEvent, { type: Type }>;

/** What may have been heard can be asked about: it is on offer, and a yes to it could answer nothing else. */
export function mayBeAskedAbout(context: GuideContext, { command }: Of<'unsure'>): boolean {
  const now = offeredOutright(context);
  return context.saying === undefined && now.includes(command) && !now.includes('yes');
}

export function askAbout(context: GuideContext, { command }: Of<'unsure'>): Effect {
  const { text } = context.words;
  const asked = text.ears.didYouSay(text.guide.commands[command][0] ?? command);
  return say({ ...context, unsure: command }, 'aside', [asked]);
}

/** It was meant: it is taken as if it had been heard surely. */
export const meant = (context: GuideContext, { how, at }: GuideCommand): Effect => ({
  context: { ...context, unsure: undefined },
  out: context.unsure ? [{ type: 'meant', command: { type: context.unsure, how, at } }] : [],
});

export const notMeant = (context: GuideContext): Effect => {
  const { context: next, out } = sayOwn({ ...context, unsure: undefined });
  return { context: next, out: [tone('heard'), ...out] };
};

/** The ears are of little use: the pads and keys go on. */
export const tellHardToHear = (context: GuideContext, { why }: Of<'hard to hear'>): Effect =>
  say(context, 'aside', [context.words.text.ears[why]]);

/** What went wrong changes what is known to be in the wine: an ear alone cannot say so. */
export const needsHand = ({ draft }: GuideContext, { how }: GuideCommand): boolean =>
  how === 'voice' && draft?.type === 'mishap told' && MISHAPS[draft.mishap].changesWine;

export const askForHand = (context: GuideContext): Effect =>
  say(context, 'aside', [context.words.text.ears.padOrKey]);

/** A mishap that leaves the wine as it was, and asks for nothing beside it, can be told by ear, and is read back. */
export const isTold = ({ telling }: GuideContext, { mishap }: Of<'mishap heard'>): boolean =>
  telling && !MISHAPS[mishap].changesWine && !MISHAPS[mishap].asks;

export const draftMishap = (context: GuideContext, { mishap }: Of<'mishap heard'>): Effect => ({
  context: { ...context, draft: { type: 'mishap told', how: 'voice', mishap }, doubt: undefined, before: [] },
  out: [tone('heard')],
});

/** Any other lies on the screen, for the hand to tell. */
export function showMishap(context: GuideContext, { mishap }: Of<'mishap heard'>): Effect {
  const { title } = whatHappened(context.words).mishaps[mishap];
  const said = say(context, 'aside', [context.words.text.ears.onScreen(title)]);
  return {
    context: said.context,
    out: [tone('heard'), { type: 'show', card: 'mishap', mishap }, ...said.out],
  };
}
