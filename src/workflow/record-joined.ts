import type { Moment } from '../domain/calendar';
import type { Litres } from '../domain/unit';
import type { Facts } from '../procedure/facts';
import { actsOf, addedBefore, isInBottles, pitchedBefore, workBehind } from '../procedure/joining';
import type { KitSheet } from '../procedure/kit-sheet';
import type { EventOf } from './batch-event';

/** The facts of a batch that was running already: what is told of it, and the work that must lie behind it. No evidence. */
export function joined(sheet: KitSheet, facts: Facts, event: EventOf<'joined'>): Facts {
  const { reached, litres, filled, since } = event;
  const begun: Moment = { ...facts.now, at: since };
  const known: Facts = { ...facts, begun, joined: { ...facts.now, reached } };
  const additions = addedBefore(sheet, known, event);
  const added: Facts = {
    ...known,
    additions,
    done: marked(
      additions.flatMap(({ sachet }) => actsOf({ id: sachet })),
      facts.now,
    ),
    ledger: isInBottles(reached)
      ? []
      : [{ entry: facts.entries, cause: 'must', litres: litres ?? (sheet.batchLitres as Litres) }],
  };
  const pitched = pitchedBefore(sheet, added, event);
  const fermenting: Facts = pitched ? { ...added, pitched } : added;
  return {
    ...fermenting,
    done: {
      ...added.done,
      ...marked(workBehind(sheet, fermenting, reached), facts.now),
      ...bottled(event, facts.now),
    },
    ...(filled === undefined ? {} : { filled }),
    // Its wrappers went out with the rubbish long ago.
    wrappersCounted: facts.entries,
  };
}

const marked = (acts: readonly string[], now: Moment): Record<string, Moment> =>
  Object.fromEntries(acts.map((act) => [act, now]));

const bottled = ({ reached }: EventOf<'joined'>, now: Moment): Record<string, Moment> =>
  isInBottles(reached) ? marked(['count filled 1'], now) : {};
