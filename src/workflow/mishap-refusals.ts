import type { Problem } from '../domain/problem';
import type { Litres } from '../domain/unit';
import { canBeTakenBack, isTimely } from '../procedure/can-be-told';
import { isIn, litresNow, type Facts, type MishapTold } from '../procedure/facts';
import { printedOn } from '../procedure/judge';
import type { Sachet } from '../procedure/kit-sheet';
import { sachetsToTell, toldSachet } from '../procedure/leads';
import { MISHAPS } from '../procedure/mishap';
import { aliveSince } from '../procedure/phases/ferment';
import { wrappersDue } from '../procedure/wrappers';
import type { EventOf } from './batch-event';
import { tooShort } from './reason';
import type { Refusals, Standing } from './standing';

export const MISHAP_REFUSALS: Refusals = {
  'mishap told': mayBeTold,
  'mishap struck': mayBeStruck,
  'looked again': ({ facts }, { entry }) =>
    standingAt(facts, entry)?.lookAgain === undefined ? { code: 'nothing-to-look-at' } : undefined,
  'wrappers counted': wrappersDiffer,
};

type Telling = EventOf<'mishap told'>;

/** It can have happened, is not told twice, says what must be said beside it, and does not contradict the journal. */
function mayBeTold(then: Standing, event: Telling): Problem | undefined {
  const { sheet, facts, place } = then;
  const rules = MISHAPS[event.mishap];
  const timely = isTimely(sheet, facts, place, event.mishap);
  if (timely !== 'timely') return { code: 'cannot-have-happened', yet: timely === 'not yet' };
  if (rules.changesWine && (event.how === 'voice' || event.how === 'timer')) return { code: 'not-by-voice' };
  return (
    toldAlready(facts, event) ??
    wrongSachet(then, event) ??
    wrongLitres(then, event) ??
    workingYeast(facts, event)
  );
}

/** The same again, before it was time to look again, is the same. Glass stays in the wine. */
function toldAlready({ mishaps }: Facts, event: Telling): Problem | undefined {
  const same = mishaps.findLast(
    ({ mishap, sachet, litres, struck }) =>
      mishap === event.mishap &&
      !struck &&
      litres === event.litres &&
      (event.sachet === undefined || sachet === event.sachet),
  );
  const isOver = same !== undefined && (same.lookAgain === undefined || same.lookAgain <= event.at);
  const stays = MISHAPS[event.mishap].change === 'glass in wine';
  return same && (!isOver || stays) ? { code: 'told-already', since: same.at } : undefined;
}

function wrongSachet({ sheet, facts }: Standing, event: Telling): Problem | undefined {
  const { asks, mayTell, change } = MISHAPS[event.mishap];
  if (asks === 'sachet' && event.sachet === undefined) return { code: 'which-sachet' };
  const sachet = toldSachet(sheet, facts, event);
  if (event.sachet !== undefined && !sachet) return { code: 'not-on-sheet', sachet: event.sachet };
  if (!sachet || (asks !== 'sachet' && mayTell !== 'sachet' && change === 'nothing')) return undefined;
  if (!sachetsToTell(sheet, event.mishap).includes(sachet))
    return { code: 'not-that-kind', sachet: sachet.printed };
  return contradiction(facts, event, sachet);
}

/** Whether the journal has the sachet in the wine, and whether the mishap needs it there. */
function contradiction(facts: Facts, { mishap }: Telling, { id, printed }: Sachet): Problem | undefined {
  const since = facts.additions.find(({ sachet }) => sachet === id)?.at;
  if (EITHER.has(mishap)) return undefined;
  if (NEEDS_IT_IN.has(mishap))
    return since === undefined ? { code: 'not-in-yet', sachet: printed } : undefined;
  if (since !== undefined) return { code: 'already-in', sachet: printed, since };
  return mishap === 'forgot bentonite' && id in facts.leftOut
    ? { code: 'cannot-be-left-out', sachet: printed }
    : undefined;
}

const EITHER: ReadonlySet<string> = new Set(['finings reversed', 'pitched again']);
const NEEDS_IT_IN: ReadonlySet<string> = new Set(['sachet still full', 'forgot yeast']);

function wrongLitres({ facts }: Standing, { mishap, litres }: Telling): Problem | undefined {
  const { asks, change } = MISHAPS[mishap];
  const needed = asks === 'litres' || (change === 'filled anew' && facts.pitched !== undefined);
  if (litres === undefined) return needed ? { code: 'how-many-litres' } : undefined;
  const there = change === 'filled anew' ? facts.brim : change === 'topped up' ? undefined : litresNow(facts);
  if (litres === 0 || (there !== undefined && litres > there))
    return { code: 'more-than-there-is', litres, there: there ?? (0 as Litres) };
  return undefined;
}

const NO_YEAST: ReadonlySet<string> = new Set(['yeast not started', 'pitched again', 'forgot yeast']);

/** Yeast that was seen at work was neither forgotten nor slow to start. */
function workingYeast(facts: Facts, { mishap, sachet }: Telling): Problem | undefined {
  const yeast = facts.additions.some(
    (addition) => addition.sachet === sachet && addition.contents.includes('yeast'),
  );
  if (!NO_YEAST.has(mishap) && !(mishap === 'sachet still full' && yeast)) return undefined;
  const since = aliveSince(facts);
  return since === undefined ? undefined : { code: 'journal-says-otherwise', since };
}

const standingAt = ({ mishaps }: Facts, entry: number): MishapTold | undefined =>
  mishaps.find((told) => told.entry === entry && !told.struck);

function mayBeStruck(
  { facts }: Standing,
  { entry, reason, how }: EventOf<'mishap struck'>,
): Problem | undefined {
  if (how === 'voice') return { code: 'not-by-voice' };
  return canBeTakenBack(facts, entry) ? tooShort(reason) : { code: 'nothing-to-correct' };
}

/** The empties on the bench are those of the sachets that went in: not one more, not one fewer. */
function wrappersDiffer(
  { sheet, facts }: Standing,
  { empty }: EventOf<'wrappers counted'>,
): Problem | undefined {
  const due = wrappersDue(sheet, facts);
  if (due.length === 0) return { code: 'nothing-to-look-at' };
  const tooMany = empty.filter((id) => !isIn(facts, id)).map((id) => printedOn(sheet, id));
  const tooFew = due.filter(({ id }) => !empty.includes(id)).map((sachet) => sachet.printed);
  return tooMany.length > 0 || tooFew.length > 0 ? { code: 'wrappers-differ', tooMany, tooFew } : undefined;
}
