import { nextFreeHour } from '../domain/calendar';
import { base } from './act';
import type { Facts } from './facts';
import type { KitSheet } from './kit-sheet';
import { inUse } from './limits';
import type { Mishap } from './mishap';
import type { Phase } from './phase';
import { label, rest, stand, washUp } from './phases/after';
import { bottle } from './phases/bottle';
import { clean } from './phases/clean';
import { clear } from './phases/clear';
import { degas } from './phases/degas';
import { ferment } from './phases/ferment';
import { fine } from './phases/fine';
import { mix } from './phases/mix';
import { pitch } from './phases/pitch';
import { prepare } from './phases/prepare';
import { rack } from './phases/rack';
import { sanitise } from './phases/sanitise';
import { stabilise } from './phases/stabilise';
import { topUp } from './phases/top-up';
import type { Act } from './step';

const ACTS_OF: Record<Phase, (sheet: KitSheet, facts: Facts) => Act[]> = {
  prepare,
  clean,
  sanitise,
  mix,
  pitch,
  ferment,
  rack,
  stabilise,
  degas,
  fine,
  'top up': topUp,
  clear,
  bottle,
  stand,
  label,
  'wash up': washUp,
  rest,
};

/** The acts of one phase, worked out from the sheet and the facts each time: no list is ever stored. */
export function plan(phase: Phase, sheet: KitSheet, facts: Facts): readonly Act[] {
  const known = planned.get(facts);
  const acts = known?.sheet === sheet ? known.acts : {};
  if (known?.sheet !== sheet) planned.set(facts, { sheet, acts });
  return (acts[phase] ??= withInstrument(ACTS_OF[phase](inUse(sheet, facts.leftOut), facts), facts).map(
    (act) => notWhileAway(act, facts),
  ));
}

/** Facts never change, so what follows from them is worked out once: guards, the fold and the screen ask in turn. */
const planned = new WeakMap<Facts, { sheet: KitSheet; acts: Partial<Record<Phase, Act[]>> }>();

/** Also where it was told by mistake: what is taken back is in the journal, and so is its check. */
const HYDROMETER_GONE: ReadonlySet<Mishap> = new Set<Mishap>(['hydrometer broken', 'hydrometer in the wine']);

/** Where the hydrometer is gone, or was never seen, another is checked in water before the next reading. */
function withInstrument(acts: Act[], facts: Facts): Act[] {
  const next = acts.findIndex(
    ({ done, kind, check }) => !done && (kind === 'reading' || check === 'box complete'),
  );
  const nth = facts.mishaps.filter(({ mishap }) => HYDROMETER_GONE.has(mishap)).length + 1;
  const another: Act = { ...base(facts, 'check hydrometer', nth), kind: 'instrument' };
  const isAsked = facts.instrument !== undefined || acts.some(({ id }) => id === another.id);
  return isAsked || next < 0 ? acts : acts.toSpliced(next, 0, another);
}

/** What comes due while the maker is away waits for the first free hour after. */
function notWhileAway(act: Act, facts: Facts): Act {
  const { due } = act;
  const away = due !== undefined && facts.away.find(({ from, until }) => due >= from && due <= until);
  return away ? { ...act, due: nextFreeHour({ ...facts.now, at: away.until }, facts.freeHour) } : act;
}

/** The first act of a phase that is not done; none when the phase is over. */
export const currentAct = (phase: Phase, sheet: KitSheet, facts: Facts): Act | undefined =>
  plan(phase, sheet, facts).find(({ done }) => !done);
