import { timeLeft } from '../workflow/clock';
import type { Instant } from '../domain/unit';
import { isIrreversible } from '../procedure/step';
import { isPhase } from '../procedure/phase';
import type { Words } from './guide-text';
import type { Situation } from './situation';

/** As many of the last acts as someone remembers. */
const REMEMBERED = 3;

/** Where we are: what was done, what was not, how long a clock has to run, what is in your hand, what was asked. */
export type Recap = {
  where: string;
  done: string;
  notDone?: string;
  clock?: string;
  inHand?: string;
  unanswered?: string;
};

export function recapOf(
  situation: Situation,
  question: string | undefined,
  at: Instant,
  words: Words,
): Recap {
  const { guide, places } = words.text;
  const { place, nth, of, done, now, clock } = situation;
  const behind = {
    where: isPhase(place) && nth > 0 ? guide.actOf(places[place], nth, of) : guide.place(places[place]),
    done: doneLine(done, words),
  };
  if (!now) return behind;
  return {
    ...behind,
    notDone: guide.recap.notDone(now.words.show.replace(/\.$/, '')),
    ...(clock ? { clock: guide.clock.left(words.formats.duration(timeLeft(clock, at))) } : {}),
    inHand: inHand(situation, words),
    ...(question === undefined ? {} : { unanswered: guide.recap.unanswered(question) }),
  };
}

const doneLine = (done: readonly string[], { text: { guide }, formats }: Words): string =>
  done.length === 0 ? guide.recap.nothingDone : guide.recap.done(formats.list(done.slice(-REMEMBERED)));

function inHand({ now }: Situation, { text: { guide } }: Words): string {
  return now?.act.kind === 'add' && isIrreversible(now.act)
    ? guide.recap.inHand(guide.sachet(now.act.sachet))
    : guide.recap.nothingInHand;
}
