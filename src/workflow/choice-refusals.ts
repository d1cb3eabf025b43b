import type { Problem } from '../domain/problem';
import { canBeLeftOut } from '../procedure/can-be-left-out';
import { RUNGS, type Facts } from '../procedure/facts';
import { unsafeToLeave } from '../procedure/safe-pause';
import type { EventOf } from './batch-event';
import { tooShort } from './reason';
import type { Refusals, Standing } from './standing';

export const CHOICE_REFUSALS: Refusals = {
  'left out': mayBeLeftOut,
  helped: ({ facts }, { rung }) => (rung === nextRung(facts) ? undefined : { code: 'not-the-next-rung' }),
  'away planned': ({ sheet, facts, place }, { from, until }) =>
    unsafeToLeave(sheet, facts, place, from, until),
  'sugar tested': ({ facts }) => (facts.pitched ? undefined : { code: 'no-yeast-yet' }),
  ended: (_, { how, reason }) => (how === 'voice' ? { code: 'not-by-voice' } : tooShort(reason)),
};

/** Yeast never; nothing that is in the wine already; nothing by voice. */
function mayBeLeftOut({ sheet, facts }: Standing, event: EventOf<'left out'>): Problem | undefined {
  if (event.how === 'voice') return { code: 'not-by-voice' };
  const sachet = sheet.sachets.find(({ id }) => id === event.sachet);
  if (!sachet || !canBeLeftOut(sheet, facts, sachet))
    return { code: 'cannot-be-left-out', sachet: sachet?.printed ?? event.sachet };
  return tooShort(event.reason);
}

/** The ladder is climbed one rung at a time: the gentlest that was not tried yet. */
const nextRung = ({ help }: Facts): (typeof RUNGS)[number] | undefined =>
  RUNGS.find((rung) => help.every((tried) => tried.rung !== rung));
