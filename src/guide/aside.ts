import { timeLeft } from '../workflow/clock';
import type { Command } from '../voice/commands';
import { fieldAsked } from './dictate';
import { isYesNo } from './dictation';
import type { GuideContext } from './guide-context';
import { numberAsked } from './number-asked';
import { offered } from './offered';
import { ownLines } from './own-lines';
import { questionOf } from './question-of';
import { recapOf } from './recap';
import type { Situation } from './situation';

/** What a question is answered with: it moves nothing, and what was asked before still stands. */
export function aside(command: Command, context: GuideContext): string[] {
  return context.situation ? (ASIDES[command]?.(context.situation, context) ?? []) : [];
}

type Aside = (situation: Situation, context: GuideContext) => string[];

const ASIDES: Partial<Record<Command, Aside>> = {
  again: (_, context) => ownLines(context),
  why: (situation, context) => {
    const { now, gate, asks } = situation;
    const { text, formats } = context.words;
    const field = fieldAsked(context);
    if (field && !isYesNo(field)) {
      const { kind } = numberAsked(field, situation, formats.units);
      return [text.dictated.ways[kind]];
    }
    return [
      ...(now ? [now.words.why] : []),
      ...(gate ? [text.gates[gate.gate].why] : []),
      ...(asks ? [text.judgements[asks].how] : []),
    ];
  },
  'how long': ({ clock, next }, { at, words: { text, formats } }) => {
    if (clock) return [text.guide.clock.left(formats.duration(timeLeft(clock, at)))];
    return next ? [text.guide.notDue(next.words.show, formats.dayAndTime(next.due))] : [];
  },
  'where are we': (situation, context) =>
    Object.values(recapOf(situation, questionOf(context), context.at, context.words)),
  'what can I say': (_, context) => {
    const { guide } = context.words.text;
    const phrases = offered(context).map((each) => guide.commands[each][0] ?? each);
    return [guide.youCanSay(phrases.join(', '))];
  },
  'new reading': (_, { words: { text } }) => [text.guide.readCard],
  'stop listening': (_, { words: { text } }) => [text.ears.off],
};
