import { timeLeft } from '../workflow/clock';
import type { Instant } from '../domain/unit';
import { isIrreversible } from '../procedure/step';
import { isPhase } from '../procedure/phase';
import type { Words } from './guide-text';
import type { Situation } from './situation';

/** As many of the last acts as someone remembers. */
const REMEMBERED = 3;

/** Where we are: done, not done, in your hand. */
export function recapLines(
  situation: Situation,
  question: string | undefined,
  at: Instant,
  words: Words,
): string[] {
  const { guide, places } = words.text;
  const { place, nth, of, done, now, clock } = situation;
  const where = isPhase(place) && nth > 0 ? guide.actOf(places[place], nth, of) : guide.place(places[place]);
  if (!now) return [where, ...doneLine(done, words)];
  return [
    where,
    ...doneLine(done, words),
    guide.recap.notDone(now.words.show.replace(/\.$/, '')),
    ...(clock ? [guide.clock.left(words.formats.duration(timeLeft(clock, at)))] : []),
    inHand(situation, words),
    ...(question === undefined ? [] : [guide.recap.unanswered(question)]),
  ];
}

const doneLine = (done: readonly string[], { text: { guide }, formats }: Words): string[] => [
  done.length === 0 ? guide.recap.nothingDone : guide.recap.done(formats.list(done.slice(-REMEMBERED))),
];

function inHand({ now }: Situation, { text: { guide } }: Words): string {
  return now?.act.kind === 'add' && isIrreversible(now.act)
    ? guide.recap.inHand(guide.sachet(now.act.sachet))
    : guide.recap.nothingInHand;
}
