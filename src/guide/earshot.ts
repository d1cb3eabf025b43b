import { MISHAP_IDS, type Mishap } from '../procedure/mishap';
import type { Command } from '../voice/commands';
import { asHeard } from '../voice/grammar-for';
import type { NumberAsked } from '../voice/number-grammar';
import { fieldAsked, isNumberAsked } from './dictate';
import { isYesNo } from './dictation';
import type { GuideContext } from './guide-context';
import { numberAsked } from './number-asked';
import { offered } from './offered';

/** What a phrase means where the guide stands. */
export type Meaning = { command: Command } | { mishap: Mishap };

/** What can be heard now, and nothing else: the phrases on offer, and a number where one is asked. */
export type Earshot = { phrases: ReadonlyMap<string, Meaning>; numbers?: NumberAsked };

/** A guide that is busy hears nothing. */
export function earshot(context: GuideContext): Earshot {
  const { guide } = context.words.text;
  const told = context.telling ? context.words.whole()?.whatHappened : undefined;
  const commands = offered(context).flatMap((command) =>
    guide.commands[command].map((phrase): [string, Meaning] => [asHeard(phrase), { command }]),
  );
  const mishaps = told
    ? MISHAP_IDS.map((mishap): [string, Meaning] => [asHeard(told.mishaps[mishap].spoken), { mishap }])
    : [];
  const numbers = numberHeard(context);
  // A command is never taken for what went wrong.
  return { phrases: new Map([...mishaps, ...commands]), ...(numbers ? { numbers } : {}) };
}

/** Every phrase that is a command somewhere. */
export const sayable = ({ text }: GuideContext['words']): readonly string[] =>
  Object.values(text.guide.commands).flat();

function numberHeard(context: GuideContext): NumberAsked | undefined {
  const field = fieldAsked(context);
  const { situation, words } = context;
  if (!situation || !field || isYesNo(field) || !isNumberAsked(context)) return undefined;
  const { kind, lowest, highest } = numberAsked(field, situation, words.formats.units);
  return { kind, lowest, highest };
}
