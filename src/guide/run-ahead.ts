import { HOUR } from '../domain/calendar';
import type { Facts } from '../procedure/facts';
import { judge } from '../procedure/judge';
import type { KitSheet } from '../procedure/kit-sheet';
import { COURSE, isGate, isPhase, type Gate, type Phase, type Place } from '../procedure/phase';
import { plan } from '../procedure/plan';
import type { Act } from '../procedure/step';

/** The acts that follow one another without a wait of days, from where the batch stands. */
export type Run = { phases: readonly Phase[]; acts: readonly Act[] };

/** Gates that are passed on the day on which they are reached. */
const SAME_DAY: ReadonlySet<Gate> = new Set<Gate>(['proving mixed', 'proving gas-free']);

/** A wait that nobody stands beside. */
const LONG_HOURS = 3;

/** What lies ahead up to the next wait. It ends at an act that is not due, and at a gate that needs days. */
export function runAhead(place: Place, sheet: KitSheet, facts: Facts): Run {
  const run = { phases: [] as Phase[], acts: [] as Act[] };
  if (!isPhase(place) && !isGate(place)) return run;
  for (const ahead of COURSE.slice(COURSE.indexOf(place))) {
    if (isGate(ahead)) {
      if (!SAME_DAY.has(ahead) && !judge(ahead, sheet, facts).open) return run;
      continue;
    }
    // What is asked wherever it is missing is asked once: the hydrometer's check stands before each first reading.
    const isAhead = (id: string) => run.acts.some((act) => act.id === id);
    const open = plan(ahead, sheet, facts).filter(({ done, id }) => !done && !isAhead(id));
    const wait = open.findIndex((act) => isLong(act, facts));
    const taken = wait < 0 ? open : open.slice(0, wait);
    run.acts.push(...taken);
    if (taken.length > 0) run.phases.push(ahead);
    if (wait >= 0) return run;
  }
  return run;
}

const isLong = (act: Act, { now }: Facts): boolean =>
  act.kind === 'wait' ||
  // How long it clears is known only once it has begun.
  act.step === 'look through the wine' ||
  (act.kind === 'timer' && act.seconds > LONG_HOURS * 3600) ||
  (act.due !== undefined && act.due - now.at > LONG_HOURS * HOUR);
