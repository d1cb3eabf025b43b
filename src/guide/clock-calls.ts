import type { Instant } from '../domain/unit';
import type { Clock } from '../procedure/facts';
import type { Act } from '../procedure/step';
import type { Words } from './guide-text';

/** Something to call out while a clock runs. */
type Call = { at: Instant; words: string };

/** Clocks shorter than this have no half. */
const SHORTEST_WITH_HALVES = 40;
const LAST_SECONDS = 10;
const SHORTEST_WITH_LAST_SECONDS = 20;

type Running = Extract<Clock, { running: true }>;

/** What falls due on a running clock after one moment and up to another. */
export const callsDue = (act: Act, clock: Running, after: Instant, until: Instant, words: Words): string[] =>
  callsOf(act, clock, words)
    .filter(({ at }) => at > after && at <= until)
    .toSorted((a, b) => a.at - b.at)
    .map((call) => call.words);

function callsOf(act: Act, clock: Running, { text: { guide }, formats }: Words): Call[] {
  const { seconds, endsAt } = clock;
  const leaving = (left: number): Instant => (endsAt - left * 1000) as Instant;
  const half = Math.floor(seconds / 2);
  return [
    ...reversals(act, seconds).map((left) => ({ at: leaving(left), words: guide.clock.reverse })),
    ...(seconds >= SHORTEST_WITH_HALVES
      ? [{ at: leaving(half), words: guide.clock.half(formats.duration(half)) }]
      : []),
    ...(seconds >= SHORTEST_WITH_LAST_SECONDS
      ? [{ at: leaving(LAST_SECONDS), words: guide.clock.lastSeconds }]
      : []),
  ];
}

/** Seconds left at each turn: counted from the start of the stir, none at its very end. */
function reversals(act: Act, seconds: number): number[] {
  const every = act.kind === 'stir' ? act.reverseSeconds : undefined;
  if (every === undefined) return [];
  return Array.from({ length: Math.ceil(seconds / every) - 1 }, (_, index) => seconds - (index + 1) * every);
}
