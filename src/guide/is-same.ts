import type { GuideContext } from './guide-context';
import type { Situation } from './situation';

/** Whether a situation has nothing in it that the guide must speak of. Our own report always has. */
export function isSame({ situation, reported }: GuideContext, next: Situation): boolean {
  if (!situation) return false;
  if (reported && next.entries !== situation.entries) return false;
  return keyOf(situation) === keyOf(next);
}

const keyOf = ({ place, now, next, clock, gate, obstacle, asks }: Situation): string =>
  JSON.stringify([
    place,
    now?.act.id,
    next?.act.id,
    clock,
    gate && (gate.verdict.open || [gate.verdict.because.code, gate.verdict.also.map(({ code }) => code)]),
    obstacle,
    asks,
  ]);
