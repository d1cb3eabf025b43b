import { hoursAfter } from '../domain/calendar';
import { standing } from '../domain/reading';
import type { Instant } from '../domain/unit';
import { RUNGS, type Facts, type Rung } from './facts';
import { readingsOfFerment } from './selections';

/** Help for a stuck ferment: what was tried, and what now. A rung that needs its time is looked at again after it. */
export type Ladder = {
  tried: Facts['help'];
  now:
    | { code: 'take'; rung: Rung }
    | { code: 'look again'; rung: Rung; after: Instant }
    | { code: 'all tried'; after: Instant };
};

/** Yeast that was warmed, roused or renewed shows in three days whether it has taken; common practice. */
const SHOWS_AFTER_HOURS = 72;

/** The next help for a ferment that is stuck, or when to look whether the last one did its work. */
export function ladder(facts: Facts): Ladder {
  const tried = facts.help;
  const last = tried.at(-1);
  const next = RUNGS.find((rung) => tried.every((help) => help.rung !== rung));
  const after = last && hoursAfter(last.at, last.rung === 'read again' ? 0 : SHOWS_AFTER_HOURS);
  if (last && after !== undefined && last.rung !== 'read again' && !wasReadSince(facts, after))
    return { tried, now: { code: 'look again', rung: last.rung, after } };
  return {
    tried,
    now: next ? { code: 'take', rung: next } : { code: 'all tried', after: after ?? facts.now.at },
  };
}

const wasReadSince = (facts: Facts, after: Instant): boolean =>
  standing(readingsOfFerment(facts)).some(({ takenAt }) => takenAt >= after);
