import { daysBetween, localDay } from '../../src/domain/calendar';
import { answersSince } from '../../src/domain/judgement';
import type { Instant } from '../../src/domain/unit';
import { clearingAct } from '../../src/procedure/judge';
import { lastStirredUp } from '../../src/procedure/selections';
import type { Known } from './known';

/** Beyond its gate nobody asks any more how clear it was: a ferment that starts again clears anew. */
export function clearing({ sheet, facts, place }: Known): unknown {
  const since = facts.done[clearingAct(facts)];
  if (!since || (place !== 'clear' && place !== 'proving clear')) return undefined;
  const stirredUp = lastStirredUp(facts);
  const looks = answersSince(facts.judgements, 'clear', Math.max(since.at, stirredUp));
  const days = new Set(looks.slice(looks.findLastIndex(({ yes }) => !yes) + 1).map(localDay)).size;
  const last = looks.at(-1);
  return [
    last?.yes,
    last && localDay(last) === localDay(facts.now),
    stirredUp > 0 &&
      looks.length === 0 &&
      localDay({ ...facts.now, at: stirredUp as Instant }) < localDay(facts.now),
    Math.min(days, 2),
    Math.min(daysBetween(since, facts.now), sheet.clearingDays),
  ];
}
