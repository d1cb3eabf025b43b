import { secondsLate, afterReload } from '../timers/clocks';
import { timeLeft } from '../workflow/clock';
import { isEnd } from '../procedure/phase';
import type { Clock } from '../procedure/facts';
import type { Act } from '../procedure/step';
import { tell, type BenchText } from '../text/text';
import { fieldAsked } from './dictate';
import { goesOnByItself } from './goes-on-by-itself';
import type { GuideContext } from './guide-context';
import type { Stage } from './guide-events';
import { questionOf } from './question-of';
import type { Situation } from './situation';
import { isTyped } from './touches';
import { warningLines } from './warning';

type Lines = (situation: Situation, context: GuideContext) => string[];

/** What the guide says by itself in a stage: what is asked of the maker, and how to answer where that is not plain. */
export const ownLines = (context: GuideContext): string[] =>
  context.situation ? OWN[context.stage](context.situation, context) : [];

const OWN: Record<Stage, Lines> = {
  resting: () => [],
  warning: ({ now }, { words }) => (now ? warningLines(now, words.text) : []),
  acting,
  dictating: (_, context) => {
    const field = fieldAsked(context);
    return field ? [context.words.text.dictated.asks[field](context.words.formats)] : [];
  },
  'reading back': (_, context) => {
    const question = questionOf(context);
    return question === undefined ? [] : [question];
  },
  timing,
  'time up': timeUp,
  'at a gate': atGate,
  'not due': notDue,
  held,
  'looking back': ({ done }, { lookedBack, words: { text } }) => {
    const act = done[done.length - lookedBack];
    return [act === undefined ? text.guide.back.nothing : text.guide.back.looking(act)];
  },
};

function acting(
  { now, obstacle, asks }: Situation,
  { listening, words: { text, formats } }: GuideContext,
): string[] {
  if (!now) return [];
  const { guide, judgements } = text;
  const held = obstacle ? [guide.notYet, tell(text, obstacle, formats)] : [];
  const timed = now.act.kind === 'stir' || now.act.kind === 'timer';
  const begin = timed ? [guide.say(guide.commands.start[0] ?? '')] : [];
  const write = listening && isTyped(now.act) ? [howToWrite(now.act, text)] : [];
  return [...held, now.words.say, ...(asks ? [judgements[asks].question] : [...begin, ...write])];
}

/** How to begin telling a number. */
function howToWrite({ kind }: Act, { guide, dictated }: BenchText): string {
  return kind === 'reading'
    ? dictated.takeSample(guide.commands['new reading'][0] ?? '')
    : dictated.writeDown(guide.commands['write down'][0] ?? '');
}

/** A clock that runs this long was not started just now. */
const JUST_NOW = 3000;

function timing({ now, clock }: Situation, { at, words: { text, formats } }: GuideContext): string[] {
  if (!now || !clock?.running) return [];
  const duration = formats.duration(timeLeft(clock, at));
  return [
    at - clock.startedAt < JUST_NOW ? text.guide.clock.begins(duration) : text.guide.clock.left(duration),
  ];
}

/** Later than this is no longer "now". */
const LATE_SECONDS = 3;

function timeUp({ now, clock, lastAt }: Situation, { at, words: { text, formats } }: GuideContext): string[] {
  if (!now || !clock?.running) return [];
  const { guide } = text;
  const late = secondsLate(clock.endsAt, at);
  const said = late < LATE_SECONDS ? guide.clock.timeUp : guide.clock.wasUp(formats.duration(late));
  const overdue = afterReload(lastAt, at, clock.endsAt) === 'long overdue' ? [guide.clock.longOverdue] : [];
  const { done, wait, 'one more minute': more } = guide.commands;
  const next = goesOnByItself(now.act, late)
    ? guide.clock.goesOn(wait[0] ?? '')
    : guide.sayEither(done[0] ?? '', more[0] ?? '');
  return [said, ...overdue, next];
}

function atGate({ gate, asks }: Situation, { words: { text, formats } }: GuideContext): string[] {
  if (!gate) return [];
  const { guide, gates, judgements, places } = text;
  const { verdict, remedy } = gate;
  const goOn = guide.say(guide.commands['go on'][0] ?? '');
  if (verdict.open) return [gates[gate.gate].question, gates[gate.gate].open, goOn];
  const back = remedy ? [guide.wayBack(places[remedy.to]), goOn] : [];
  const when =
    verdict.earliest === undefined || asks ? [] : [guide.earliest(formats.dayAndTime(verdict.earliest))];
  const question = asks ? [judgements[asks].question] : [];
  return [
    gates[gate.gate].question,
    guide.notYet,
    tell(text, verdict.because, formats),
    ...when,
    ...back,
    ...question,
  ];
}

function notDue({ place, next, wrappers }: Situation, { words: { text, formats } }: GuideContext): string[] {
  const { guide, places, wrappers: emptied } = text;
  if (isEnd(place)) return [guide.ended(places[place])];
  if (!next) return [];
  const empties = wrappers.length > 0 ? [emptied.says(formats, wrappers)] : [];
  return [...empties, guide.notDue(next.words.show, formats.dayAndTime(next.due)), guide.nothingNow];
}

function held({ clock }: Situation, { at, words: { text, formats } }: GuideContext): string[] {
  const { guide } = text;
  return [clock ? heldClock(clock) : guide.held.waiting, guide.say(guide.commands['go on'][0] ?? '')];

  function heldClock(standing: Clock): string {
    const left = timeLeft(standing, at);
    if (left <= 0) return guide.held.waiting;
    return standing.running
      ? guide.held.runsOn(formats.duration(left))
      : guide.held.paused(formats.duration(left));
  }
}
