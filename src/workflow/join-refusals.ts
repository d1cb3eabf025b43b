import type { Problem } from '../domain/problem';
import { isInBottles } from '../procedure/joining';
import { comesAfter } from '../procedure/phase';
import type { EventOf } from './batch-event';
import type { Refusals, Standing } from './standing';

export const JOIN_REFUSALS: Refusals = { joined: mayJoin };

type Joined = EventOf<'joined'>;

/** Before anything else, by touch or key, and only as it can be. */
function mayJoin({ sheet, facts, place }: Standing, event: Joined): Problem | undefined {
  if (facts.entries > 0 || place !== 'prepare') return { code: 'joins-too-late' };
  if (event.how === 'voice') return { code: 'not-by-voice' };
  return (
    outOfTime(event) ??
    unknownSachet(sheet.sachets, event) ??
    yeastDisagrees(sheet.sachets, event) ??
    unmeasured(event)
  );
}

function outOfTime({ at, since, added }: Joined): Problem | undefined {
  const times = added.flatMap((one) => one.at ?? []);
  const late = [since, ...times].find((time) => time > at);
  if (late !== undefined) return { code: 'in-the-future', takenAt: late };
  const early = times.find((time) => time < since);
  return early === undefined ? undefined : { code: 'before-the-batch', takenAt: early, begun: since };
}

type Sachets = Standing['sheet']['sachets'];

function unknownSachet(sachets: Sachets, { added, notIn }: Joined): Problem | undefined {
  const unknown = [...added.map(({ sachet }) => sachet), ...notIn].find(
    (given) => !sachets.some(({ id }) => id === given),
  );
  return unknown === undefined ? undefined : { code: 'not-on-sheet', sachet: unknown };
}

/** From the ferment on the yeast is in; before it, it is not. */
function yeastDisagrees(sachets: Sachets, { reached, added, notIn }: Joined): Problem | undefined {
  const yeasts = sachets.filter(({ contents }) => contents.includes('yeast')).map(({ id }) => id);
  const yeastIn = added.some(({ sachet }) => yeasts.includes(sachet));
  const fermenting = comesAfter(reached, 'pitch');
  return (fermenting && yeasts.every((id) => notIn.includes(id))) || (!fermenting && yeastIn)
    ? { code: 'yeast-and-place-disagree', yeastIn }
    : undefined;
}

const unmeasured = ({ reached, litres, filled }: Joined): Problem | undefined =>
  (isInBottles(reached) ? filled : litres) === undefined ? { code: 'how-many-litres' } : undefined;
