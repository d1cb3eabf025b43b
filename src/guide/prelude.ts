import { afterReload } from '../timers/clocks';
import { isPhase } from '../procedure/phase';
import { frameLines } from './frame';
import type { GuideContext } from './guide-context';
import type { Situation } from './situation';
import { meetsWine } from './touches';

/** What is said once before the act itself, when the guide takes up a situation. */
export function prelude(
  { situation: previous, typed, at, words, listening }: GuideContext,
  next: Situation,
): string[] {
  const { guide, places } = words.text;
  const { place, frame, now } = next;
  const arrived = frame !== undefined || previous?.place !== place;
  return [
    ...(previous === undefined && afterReload(next.lastAt, at) === 'went back' ? [guide.clockWentBack] : []),
    ...(frame ? frameLines(frame, words, listening) : []),
    ...(previous === undefined && !frame
      ? whereWeWere(next, words)
      : isPhase(place) && arrived
        ? [guide.place(places[place])]
        : []),
    ...(typed && now && meetsWine(now.act) ? [guide.cleanHands] : []),
  ];
}

function whereWeWere(
  { place, nth, of, now, clock, resumed }: Situation,
  { text: { guide, places } }: GuideContext['words'],
): string[] {
  if (!now || !resumed) return [];
  if (clock) return [now.act.kind === 'stir' ? guide.clock.wereStirring : guide.clock.ranOn];
  return [guide.backAgain(places[place], nth, of)];
}
