import { parseGravity, type Gravity } from '../../domain/gravity';
import type { Problem } from '../../domain/problem';
import type { Look, Round } from './round';
import { numberAbove, numberBelow, seen } from './seen';

/** Where an eye goes wrong. */
export const MISTAKES = [
  'decimal',
  'bubbles',
  'wall',
  'above',
  'below',
  'rim',
  'one line',
  'wrong way',
  'far',
] as const;
export type Mistake = (typeof MISTAKES)[number];

export type Answer =
  | { verdict: 'right'; read: Gravity }
  /** A wrong place of the point leaves nothing to draw. */
  | { verdict: 'wrong'; mistake: Mistake; read?: Gravity }
  | { verdict: 'unreadable'; problem: Problem };

/** What a typed reading says of how the hydrometer was read: right within half a line, or the likeliest mistake. */
export function judgeAnswer(round: Round, look: Look, given: string): Answer {
  const parsed = parseGravity(given);
  const { flat } = seen(round, look);
  if (parsed.ok && isNear(parsed.value, round.truth, round)) return { verdict: 'right', read: parsed.value };
  const likely = parsed.ok ? likeliest(round, look, parsed.value) : undefined;
  if (!likely && [round.truth, flat].some((gravity) => digitsOf(given) === digitsOf(String(gravity))))
    return { verdict: 'wrong', mistake: 'decimal' };
  if (!parsed.ok) return { verdict: 'unreadable', problem: parsed.problem };
  return { verdict: 'wrong', mistake: likely ?? 'far', read: parsed.value };
}

const isNear = (read: number, place: number, { division }: Round): boolean =>
  Math.abs(read - place) <= division / 2;

/** The digits alone: 1.054, 1054, 1.54 and 10.54 have the same ones once the noughts are gone. */
const digitsOf = (given: string): string => given.replaceAll(/[^1-9]/g, '');

/** Of all that can be taken for the reading, the nearest to what was read; of two as near, the graver first. */
function likeliest(round: Round, look: Look, read: Gravity): Mistake | undefined {
  const { flat, rim, edge, isHeld } = seen(round, look);
  const { division, held } = round;
  const places: { mistake: Mistake; at: number }[] = [
    ...(held && isHeld ? [{ mistake: held.by, at: flat }] : []),
    ...(look.eye === 'level' ? [] : [{ mistake: look.eye, at: edge }]),
    { mistake: 'rim', at: rim },
    ...[division, 0 - division].map((off) => ({ mistake: 'one line' as const, at: flat + off })),
    ...[numberAbove(flat, division), numberBelow(flat, division)].map((number) => ({
      mistake: 'wrong way' as const,
      at: 2 * number - flat,
    })),
  ];
  return places
    .filter(({ at }) => isNear(read, at, round))
    .toSorted((a, b) => Math.abs(read - a.at) - Math.abs(read - b.at))[0]?.mistake;
}
