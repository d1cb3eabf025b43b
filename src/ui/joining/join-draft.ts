import { MINUTE, type Moment } from '../../domain/calendar';
import type { Problem } from '../../domain/problem';
import type { Instant, Litres } from '../../domain/unit';
import { parseVolume, type VolumeUnit } from '../../domain/volume';
import type { Joinable } from '../../procedure/joinable';
import { isInBottles } from '../../procedure/joining';
import type { KitSheet } from '../../procedure/kit-sheet';
import type { EventOf } from '../../workflow/batch-event';
import { parseCount } from '../../domain/parse-count';

/** What is known of one sachet: in, on a day if that is known; still full; or nothing. */
export type SachetKnown = { is: 'in' | 'not in' | 'unknown'; on: string };

/** A batch already running, as it is typed: days as the device's own fields write them. */
export type JoinDraft = {
  since: string;
  reached: Joinable | undefined;
  sachets: Record<string, SachetKnown>;
  litres: string;
  filled: string;
};

export const NOTHING_KNOWN: SachetKnown = { is: 'unknown', on: '' };

export const emptyJoin = ({ sachets }: KitSheet): JoinDraft => ({
  since: '',
  reached: undefined,
  sachets: Object.fromEntries(sachets.map(({ id }) => [id, { ...NOTHING_KNOWN }])),
  litres: '',
  filled: '',
});

type Joined = Pick<EventOf<'joined'>, 'since' | 'reached' | 'added' | 'notIn' | 'litres' | 'filled'>;
export type JoinProblems = Partial<Record<'since' | 'reached' | 'litres' | 'filled', Problem | 'unanswered'>>;

const LEAST = 1 as Litres;
const MOST = 60 as Litres;
const HALF_A_DAY = 12 * 60 * MINUTE;

/** The middle of a day, or now where that has not come: of the hour nothing is known. */
function dayTyped(day: string, now: Moment): Instant | undefined {
  const noon = Date.parse(`${day}T12:00Z`) - now.offsetMinutes * MINUTE;
  if (Number.isNaN(noon)) return undefined;
  return (noon - now.at < HALF_A_DAY ? Math.min(noon, now.at) : noon) as Instant;
}

/** The draft as it is told to the batch, or what is wrong with each field. Nothing is guessed. */
export function joinTyped(
  draft: JoinDraft,
  unit: VolumeUnit,
  now: Moment,
): { ok: true; joined: Joined } | { ok: false; problems: JoinProblems } {
  const since = dayTyped(draft.since, now);
  const { reached } = draft;
  const bottled = reached !== undefined && isInBottles(reached);
  const litres = bottled ? undefined : parseVolume(draft.litres, unit, LEAST, MOST);
  const filled = bottled ? parseCount(draft.filled) : undefined;
  if (since === undefined || !reached || litres?.ok === false || filled?.ok === false)
    return {
      ok: false,
      problems: {
        ...(since === undefined ? { since: 'unanswered' } : {}),
        ...(reached ? {} : { reached: 'unanswered' }),
        ...(litres?.ok === false ? { litres: litres.problem } : {}),
        ...(filled?.ok === false ? { filled: filled.problem } : {}),
      },
    };
  const measured = {
    ...(litres ? { litres: litres.value } : {}),
    ...(filled ? { filled: filled.value } : {}),
  };
  return { ok: true, joined: { since, reached, ...inOrOut(draft.sachets, now), ...measured } };
}

function inOrOut(sachets: JoinDraft['sachets'], now: Moment): Pick<Joined, 'added' | 'notIn'> {
  const known = Object.entries(sachets);
  return {
    added: known.flatMap(([sachet, { is, on }]) => {
      const at = dayTyped(on, now);
      return is === 'in' ? [{ sachet, ...(at === undefined ? {} : { at }) }] : [];
    }),
    notIn: known.flatMap(([sachet, { is }]) => (is === 'not in' ? [sachet] : [])),
  };
}
